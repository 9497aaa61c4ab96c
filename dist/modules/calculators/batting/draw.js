import { drawnSize, corner, inner, turning } from '../../ledger/picture.js';
import { facing } from '../../ledger/quilt.js';
import { say } from './shape.js';

/** The batting that is needed, on the batting that is bought, with what is left over. */
const draw = (answer) => {
    const { bought, seams } = boughtFor(answer);
    const [all, need, quilt] = [drawnSize(bought), drawnSize(answer.need), drawnSize(answer.quilt)];
    return [
        {
            title: say('picture', { summary: answer.summary }),
            ...all,
            boxes: [
                { x: 0, y: 0, ...all, is: 'spare' },
                { x: 0, y: 0, ...need, is: 'cloth' },
                {
                    x: (need.width - quilt.width) / 2,
                    y: (need.height - quilt.height) / 2,
                    ...quilt,
                    is: 'quilt',
                    label: say('quiltInPicture'),
                },
            ],
            lines: seams,
            dimensions: [...corner(answer.need), ...inner(0, 0, bought, 'boughtSide')],
        },
    ];
};
/** What is bought, in the direction in which the batting is cut from it, with the seams between its lengths. */
const boughtFor = ({ need, rolls: [roll], used: { pack }, }) => {
    if (pack) {
        const [width, length] = facing(pack, pack.turned);
        return { bought: { width, length }, seams: [] };
    }
    if (!roll)
        return { bought: need, seams: [] };
    const isCrosswise = roll.direction === 'crosswise';
    const at = turning(isCrosswise);
    const along = roll.buy.inches.div(roll.lengths);
    const seams = Array.from({ length: roll.seams }, (_, seam) => {
        const edge = (seam + 1) * roll.width.valueOf();
        return { is: 'seam', from: at(edge, 0), to: at(edge, along.valueOf()) };
    });
    const [width, length] = facing({ width: roll.width.mul(roll.lengths), length: along }, isCrosswise);
    return { bought: { width, length }, seams };
};

export { draw };
