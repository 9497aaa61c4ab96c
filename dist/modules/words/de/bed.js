import { METRIC_BEDS } from '../beds.js';

/** What is said of a bed, in German. */
const bed = {
    labels: {
        bed: 'Quilt für ein Bett',
        mattress: 'Matratze',
        drop: 'Überhang',
        tuck: 'Einschlag unter die Kissen',
        bedWidth: 'Quiltbreite',
        bedLength: 'Quiltlänge',
    },
    hints: { drop: 'an beiden Seiten und am Fußende' },
    options: {
        bed: {
            none: 'kein Bett',
            crib: 'Babybett',
            twin: 'Twin',
            'twin-long': 'Twin, lang',
            full: 'Full',
            queen: 'Queen',
            king: 'King',
            'california-king': 'California King',
            ...METRIC_BEDS,
            '60x120': `Kinderbett, ${METRIC_BEDS['60x120']}`,
            '70x140': `Kinderbett, ${METRIC_BEDS['70x140']}`,
        },
    },
    sentences: {
        size: (size, t) => t.size(size),
        measureYours: 'bitte nachmessen',
        notForCrib: 'Ein Quilt gehört nicht ins Bett, in dem ein Baby schläft: Dort liegt nur ein Spannbettlaken. Bitte die örtlichen Empfehlungen beachten.',
    },
};

export { bed };
