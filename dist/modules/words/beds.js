/** The beds that have no name but their size, as every language writes it. */
const METRIC_BEDS = {
    '60x120': '60 × 120 cm',
    '70x140': '70 × 140 cm',
    '90x190': '90 × 190 cm',
    '90x200': '90 × 200 cm',
    '120x200': '120 × 200 cm',
    '135x190': '135 × 190 cm',
    '140x200': '140 × 200 cm',
    '150x200': '150 × 200 cm',
    '160x200': '160 × 200 cm',
    '180x200': '180 × 200 cm',
    '200x200': '200 × 200 cm',
};

export { METRIC_BEDS };
