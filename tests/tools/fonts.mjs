import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { ROOT } from './run.mjs';

/** Free fonts that many machines have. The first one that is there is used for serif, sans-serif and monospace. */
const GENERIC = {
  serif: ['DejaVu Serif', 'Liberation Serif', 'Nimbus Roman'],
  'sans-serif': ['DejaVu Sans', 'Liberation Sans', 'Nimbus Sans'],
  monospace: ['DejaVu Sans Mono', 'Liberation Mono', 'Nimbus Mono PS'],
};

/** Fonts of three makers, which differ in width, height and in how they draw a fraction. Printing is tested with each that is there. */
export const TEXT_FONTS = ['DejaVu Serif', 'Liberation Serif', 'P052'];

/** Whether browsers here see a font. */
export const findFont = (family) =>
  (spawnSync('fc-list', [family], { encoding: 'utf8' }).stdout ?? '').trim() !== '';

const FOLDER = `${ROOT}node_modules/.cache/quilt-reckoner/fonts`;

const of = (tag, words, separator = '') => words.map((word) => `<${tag}>${word}</${tag}>`).join(separator);

const aliases = Object.entries(GENERIC).map(
  ([name, fonts]) => `<alias><family>${name}</family><prefer>${of('family', fonts)}</prefer></alias>`,
);

const FONTS = [...new Set([...Object.values(GENERIC).flat(), ...TEXT_FONTS])];
const accepted = FONTS.map(
  (font) => `<pattern><patelt name="family"><string>${font}</string></patelt></pattern>`,
);

/** Allows only these fonts, without substitutes, even if the machine has others. */
const CONFIG = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "urn:fontconfig:fonts.dtd">
<fontconfig>
${of('dir', ['/usr/share/fonts', '/usr/local/share/fonts', '~/.local/share/fonts', '~/.fonts'], '\n')}
<cachedir>${FOLDER}</cachedir>
<match target="pattern"><edit name="hintstyle" mode="append"><const>hintslight</const></edit></match>
<match target="pattern">
  ${Object.keys(GENERIC)
    .map((name) => `<test qual="all" name="family" compare="not_eq"><string>${name}</string></test>`)
    .join('\n  ')}
  <edit name="family" mode="append_last"><string>sans-serif</string></edit>
</match>
${aliases.join('\n')}
<selectfont><rejectfont><pattern/></rejectfont><acceptfont>
${accepted.join('\n')}
</acceptfont></selectfont>
</fontconfig>
`;

/**
 * The environment that makes browsers on Linux see only those fonts, so that no test depends on the machine. If FONTCONFIG_FILE
 * is set already, it stays, so that you can try other fonts. If none of the fonts is there, the machine's own are used.
 */
export const fontsTold = () => {
  if (process.env.FONTCONFIG_FILE || !FONTS.some(findFont)) return {};
  const path = `${FOLDER}/fonts.conf`;
  mkdirSync(FOLDER, { recursive: true });
  if (!existsSync(path) || readFileSync(path, 'utf8') !== CONFIG) writeFileSync(path, CONFIG);
  return { FONTCONFIG_FILE: path };
};
