/**
 * Crib: 16 CFR Part 1219 (full-size baby cribs), interior 28 × 52 3/8 in. The others: "Mattresses", sizes.com.
 */
const MATTRESSES = {
    crib: { name: 'crib', width: '28', length: '52 3/8' },
    twin: { name: 'twin', width: '39', length: '75' },
    'twin-long': { name: 'twin long', width: '39', length: '80' },
    full: { name: 'full', width: '54', length: '75' },
    queen: { name: 'queen', width: '60', length: '80' },
    king: { name: 'king', width: '78', length: '80' },
    'california-king': { name: 'California king', width: '72', length: '84' },
};

export { MATTRESSES };
