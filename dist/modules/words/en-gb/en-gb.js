import { en } from '../en/en.js';

const STEPS = '10 cm, 25 cm, 50 cm or 1/8 yd';
const { common, calculators } = en;
const { batting, block, cutting } = calculators;
const PRICE_OF_LIST = 'Price of a metre, a yard or a sheet';
/**
 * English as British quilters speak it, where that differs: wadding, metres before yards, pounds.
 * The words are from memory and have no source.
 */
const enGB = {
    ...en,
    common: {
        ...common,
        lang: 'en-GB',
        labels: { ...common.labels, price: 'Price of a metre or yard' },
        sentences: {
            ...common.sentences,
            notLength: ({ text }, t) => `${t.quote(text)} is not a length. Write it like 132 cm, 52 1/2 or 52 in.`,
            notStep: ({ text }, t) => `${t.quote(text)} is not a step a shop cuts in. Write it like ${STEPS}.`,
            stepRange: `A shop’s step is between 1/8 in and 10 yd. Write it like ${STEPS}.`,
            notCurrency: ({ text }, t) => `${t.quote(text)} is not a code of three letters. Write it like GBP.`,
            longerThanCloth: 'This is longer than any cloth. Write it like 110 cm.',
        },
    },
    calculators: {
        ...calculators,
        batting: {
            ...batting,
            title: 'Wadding',
            labels: {
                ...batting.labels,
                needWidth: 'Wadding width',
                needLength: 'Wadding length',
                fabric: 'Wadding needed',
                price: 'Price of a metre or yard from the roll',
            },
            hints: { ...batting.hints, shrinkage: 'cotton wadding 3 to 5 %' },
            sentences: {
                ...batting.sentences,
                batting: 'wadding',
                eachLength: ({ side }) => `the wadding’s ${side}`,
                lengthOfBatting: 'length of wadding',
                picture: ({ summary }, t) => `${t.say(summary)} The broken line is the quilt; what lies outside the tinted wadding is left over.`,
            },
        },
        block: { ...block, labels: { ...block.labels, price: PRICE_OF_LIST } },
        cutting: { ...cutting, labels: { ...cutting.labels, price: PRICE_OF_LIST } },
    },
};

export { enGB };
