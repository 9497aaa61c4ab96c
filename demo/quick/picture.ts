import { render } from 'lit';
import { say } from '../../src/calculators/batting/shape.js';
import { figures } from '../../src/face/lists.js';
import { giveStyles } from '../../src/face/shadow-styles.js';
import { corner, drawnSize, type Picture } from '../../src/ledger/picture.js';
import type { Size } from '../../src/ledger/quilt.js';
import { find, write } from './page.js';
import { batting, borders, top } from './parts.js';

const section = find('#picture');
const place = find('.picture', section);
const root = place.attachShadow({ mode: 'open' });
giveStyles(root, batting);

/** A quilt of which only the size is known. */
const plain = (size: Size): Picture => ({
  title: say('quiltInPicture'),
  ...drawnSize(size),
  boxes: [{ x: 0, y: 0, ...drawnSize(size), is: 'quilt', label: say('quiltInPicture') }],
  dimensions: corner(size),
});

/** The largest part of the quilt that there is a picture of. */
const pictured = (size: Size) => {
  if (borders.isConnected && borders.answer)
    return { pictures: borders.calculator.draw(borders.answer), teller: borders.teller };
  if (top.isConnected && top.answer) return { pictures: top.calculator.draw(top.answer), teller: top.teller };
  return { pictures: [plain(size)], teller: batting.teller };
};

/** Draws the quilt to scale. The picture of the whole quilt goes here. */
export const draw = (size: Size | undefined): void => {
  const { pictures, teller } = size ? pictured(size) : { pictures: [], teller: batting.teller };
  render(figures(pictures.slice(0, 1), teller), root);
  write(find('.said', section), size ? teller.size(size) : 'not yet');
};
