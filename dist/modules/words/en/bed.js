import { METRIC_BEDS } from '../beds.js';

/** What is said of a bed, in English. */
const bed = {
    labels: {
        bed: 'Quilt for a bed',
        mattress: 'Mattress',
        drop: 'Drop over the edge',
        tuck: 'Tuck under the pillows',
        bedWidth: 'Quilt width',
        bedLength: 'Quilt length',
    },
    hints: { drop: 'at both sides and the foot' },
    options: {
        bed: {
            none: 'no bed',
            crib: 'crib',
            twin: 'twin',
            'twin-long': 'twin long',
            full: 'full',
            queen: 'queen',
            king: 'king',
            'california-king': 'California king',
            ...METRIC_BEDS,
            '60x120': `crib, ${METRIC_BEDS['60x120']}`,
            '70x140': `crib, ${METRIC_BEDS['70x140']}`,
        },
    },
    sentences: {
        size: (size, t) => t.size(size),
        measureYours: 'measure yours',
        notForCrib: 'A quilt does not belong where a baby sleeps: a bare crib with a fitted sheet is safest. Follow your local guidance.',
    },
};

export { bed };
