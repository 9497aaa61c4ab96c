/**
 * Crib: 16 CFR Part 1219 (full-size baby cribs), interior 28 × 52 3/8 in. The others in inches: "Mattresses", sizes.com.
 * Those in centimetres, of British and of continental shops: from memory.
 */
const SIZES = {
    crib: { width: '28 in', length: '52 3/8 in', isCrib: true },
    twin: { width: '39 in', length: '75 in' },
    'twin-long': { width: '39 in', length: '80 in' },
    full: { width: '54 in', length: '75 in' },
    queen: { width: '60 in', length: '80 in' },
    king: { width: '78 in', length: '80 in' },
    'california-king': { width: '72 in', length: '84 in' },
    '60x120': { width: '60 cm', length: '120 cm', isCrib: true },
    '70x140': { width: '70 cm', length: '140 cm', isCrib: true },
    '90x190': { width: '90 cm', length: '190 cm' },
    '90x200': { width: '90 cm', length: '200 cm' },
    '120x200': { width: '120 cm', length: '200 cm' },
    '135x190': { width: '135 cm', length: '190 cm' },
    '140x200': { width: '140 cm', length: '200 cm' },
    '150x200': { width: '150 cm', length: '200 cm' },
    '160x200': { width: '160 cm', length: '200 cm' },
    '180x200': { width: '180 cm', length: '200 cm' },
    '200x200': { width: '200 cm', length: '200 cm' },
};
const BED_SIZES = SIZES;
/** No bed, or one of those that shops sell where people measure in these units. */
const BEDS = {
    in: ['none', 'crib', 'twin', 'twin-long', 'full', 'queen', 'king', 'california-king'],
    cm: [
        'none',
        '60x120',
        '70x140',
        '90x190',
        '90x200',
        '120x200',
        '135x190',
        '140x200',
        '150x200',
        '160x200',
        '180x200',
        '200x200',
    ],
};
/** Every bed that can be written, whatever the units. */
const BED_CHOICES = [...BEDS.in, ...BEDS.cm.slice(1)];

export { BEDS, BED_CHOICES, BED_SIZES };
