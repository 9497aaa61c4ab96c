/** More blocks than this are drawn as one field: nobody could tell them apart. */
const MOST_DRAWN = 900;
const rectangle = (x, y, width, height) => [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
];
/** All of it as one piece. */
const field = (width, height) => ({
    width,
    height,
    pieces: [{ kind: 'block', points: rectangle(0, 0, width, height) }],
});
/** Blocks in rows, with the sashing between them. */
const straight = ({ across, down, count, block, sashing, cornerstones, frame }) => {
    const [pitch, edge] = [block + sashing, frame ? sashing : 0];
    const reach = (blocks) => pitch * blocks - sashing + 2 * edge;
    const [width, height] = [reach(across), reach(down)];
    if (count > MOST_DRAWN)
        return field(width, height);
    const pieces = [];
    const add = (kind, ...[x, y, wide, tall]) => {
        if (wide > 0 && tall > 0)
            pieces.push({ kind, points: rectangle(x, y, wide, tall) });
    };
    const starts = (blocks) => Array.from({ length: blocks }, (_, at) => edge + at * pitch);
    /** Where each strip of sashing begins: before each block but the first, or before and after all. */
    const strips = (blocks) => Array.from({ length: blocks + (frame ? 1 : -1) }, (_, at) => (frame ? 0 : block) + at * pitch);
    for (const [row, y] of starts(down).entries()) {
        for (const x of starts(across))
            pieces.push({ kind: 'block', points: rectangle(x, y, block, block), row });
        for (const x of strips(across))
            add('sashing', x, y, sashing, block);
    }
    for (const y of strips(down)) {
        if (!cornerstones)
            add('sashing', 0, y, width, sashing);
        else
            for (const x of starts(across))
                add('sashing', x, y, block, sashing);
        if (cornerstones)
            for (const x of strips(across))
                add('cornerstones', x, y, sashing, sashing);
    }
    return { width, height, pieces };
};
/** A rectangle that is turned by 45° round its middle: how far it reaches along each of its own sides. */
const turned = (x, y, along, across) => {
    const half = Math.SQRT1_2 / 2;
    const corner = (right, low) => [
        x + (right * along - low * across) * half,
        y + (right * along + low * across) * half,
    ];
    return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
};
/** Blocks on point, with sashing round each and triangles at the edges. */
const onPoint = ({ across, down, count, block, sashing }) => {
    const step = (block + sashing) * Math.SQRT2;
    const start = (block + 2 * sashing) * Math.SQRT1_2;
    const reach = (blocks) => 2 * start + (blocks - 1) * step;
    const [width, height] = [reach(across), reach(down)];
    if (count > MOST_DRAWN)
        return field(width, height);
    const pieces = [];
    const seen = new Set();
    /** Adds what two blocks share only once. */
    const add = (kind, x, y, along, thick) => {
        const place = [x, y].map((at) => Math.round(((at - start) / step) * 4)).join(' ');
        if (!seen.has(place))
            pieces.push({ kind, points: turned(x, y, along, thick) });
        seen.add(place);
    };
    for (let row = 0; row < 2 * down - 1; row += 1)
        for (let column = 0; column < across - (row % 2); column += 1) {
            const [x, y] = [start + (column + (row % 2) / 2) * step, start + (row / 2) * step];
            pieces.push({ kind: 'block', points: turned(x, y, block, block), row });
            if (!sashing)
                continue;
            const quarter = step / 4;
            for (const way of [1, -1]) {
                add('sashing', x + way * quarter, y + way * quarter, sashing, block);
                add('sashing', x + way * quarter, y - way * quarter, block, sashing);
                add('cornerstones', x + 2 * way * quarter, y, sashing, sashing);
                add('cornerstones', x, y + 2 * way * quarter, sashing, sashing);
            }
        }
    return { width, height, pieces: [...pieces, ...triangles(width, height, start, step)] };
};
/** The setting triangles along the four sides, and in the four corners. */
const triangles = (width, height, start, step) => {
    const along = (reach) => Array.from({ length: Math.round((reach - 2 * start) / step) }, (_, at) => start + at * step);
    const all = [
        ...along(width).flatMap((x) => [
            [
                [x, 0],
                [x + step, 0],
                [x + step / 2, step / 2],
            ],
            [
                [x + step, height],
                [x, height],
                [x + step / 2, height - step / 2],
            ],
        ]),
        ...along(height).flatMap((y) => [
            [
                [0, y + step],
                [0, y],
                [step / 2, y + step / 2],
            ],
            [
                [width, y],
                [width, y + step],
                [width - step / 2, y + step / 2],
            ],
        ]),
        [
            [0, 0],
            [start, 0],
            [0, start],
        ],
        [
            [width - start, 0],
            [width, 0],
            [width, start],
        ],
        [
            [width, height - start],
            [width, height],
            [width - start, height],
        ],
        [
            [start, height],
            [0, height],
            [0, height - start],
        ],
    ];
    return all.map((points) => ({ kind: 'triangles', points }));
};
/** Every piece of a top in its place, row by row. A top of very many blocks is one piece. */
const layOut = (layout) => (layout.onPoint ? onPoint : straight)({
    ...layout,
    block: layout.block.valueOf(),
    sashing: layout.sashing.valueOf(),
});

export { MOST_DRAWN, layOut };
