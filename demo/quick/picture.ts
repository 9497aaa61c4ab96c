import { nothing, render } from 'lit';
import { say } from '../../src/calculators/batting/shape.js';
import { figures } from '../../src/face/lists.js';
import { giveStyles } from '../../src/face/shadow-styles.js';
import { corner, drawnSize, type Picture } from '../../src/ledger/picture.js';
import type { Size } from '../../src/ledger/quilt.js';
import { find, write } from './page.js';
import { wholeQuilt } from '../../src/workbook/whole-quilt.js';
import { batting, worksheet } from './parts.js';

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

/** Draws the quilt to scale: the whole of it, as far as its parts say how it looks. */
export const draw = (size: Size | undefined): void => {
  const { quilt, teller, swatches } = worksheet;
  const whole = size && wholeQuilt(quilt);
  const alone = size && !whole && plain(size);
  const picture = whole ?? alone;
  render(picture ? figures([picture], whole ? teller : batting.teller, swatches) : nothing, root);
  write(find('.said', section), size ? teller.size(size) : 'not yet');
};
