/**
 * Crib: 16 CFR Part 1219 (full-size baby cribs), interior 28 × 52 3/8 in. The others: "Mattresses", sizes.com.
 */
const BED_SIZES = {
    crib: { width: '28', length: '52 3/8' },
    twin: { width: '39', length: '75' },
    'twin-long': { width: '39', length: '80' },
    full: { width: '54', length: '75' },
    queen: { width: '60', length: '80' },
    king: { width: '78', length: '80' },
    'california-king': { width: '72', length: '84' },
};
/** What the quilt is for: no bed, or one of these. Written out, so that a bundler can leave it out where nobody asks for it. */
const BED_CHOICES = [
    'none',
    'crib',
    'twin',
    'twin-long',
    'full',
    'queen',
    'king',
    'california-king',
];

export { BED_CHOICES, BED_SIZES };
