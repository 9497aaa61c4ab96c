import type { Side } from './side.js';

declare global {
  interface Window {
    /** What stands in the frames, once all are ready; ours first. */
    sides: () => Promise<Side[]>;
    /** A frame after which nothing is left to draw. */
    still: () => Promise<void>;
  }
}

const frames = [...document.querySelectorAll('iframe')].map(({ contentWindow }) => contentWindow!);

window.still = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 30)));

window.sides = async () => {
  while (!frames.every((frame) => 'side' in frame)) await window.still();
  return frames.map(({ side }) => side);
};
