/** Divides spots at every cut that meets none of them. Each group starts at 0 again. */
const apart = (spots, from, to) => {
    const groups = [];
    for (const spot of spots.sort((a, b) => a[from] - b[from])) {
        let group = groups.at(-1);
        if (!group || spot[from] >= group.start + group.size)
            groups.push((group = { spots: [], size: 0, start: spot[from] }));
        group.spots.push(spot);
        spot[from] -= group.start;
        spot[to] -= group.start;
        group.size = Math.max(group.size, spot[to]);
    }
    return groups;
};
/** Puts equal things together as one with a count, in the order of the first of each. */
const gather = (things) => {
    const byKey = new Map();
    for (const thing of things) {
        const same = byKey.get(thing.key);
        if (same)
            same.times += thing.times;
        else
            byKey.set(thing.key, thing);
    }
    return [...byKey.values()];
};
/**
 * Puts a layout in an order that is easy to read: each sheet in strips from edge to edge, tallest first, equal ones together. In a
 * strip, equal columns are beside each other.
 */
const readable = (sheets, lots) => gather(sheets.map(({ bands, times }) => {
    const strips = bands.flatMap(({ blocks, times }) => {
        const spots = blocks.flatMap(({ lot, turned, x, y, across, down }) => {
            const { piece, over, width, height } = lots[lot];
            const [w, h] = turned ? [height, width] : [width, height];
            return Array.from({ length: across * down }, (_, i) => {
                const left = x + (i % across) * w;
                const top = y + Math.floor(i / across) * h;
                return { piece, turned: turned !== over, x: left, y: top, right: left + w, bottom: top + h };
            });
        });
        return apart(spots, 'y', 'bottom').map(({ spots, size }) => {
            let left = 0;
            const columns = apart(spots, 'x', 'right').map((column) => ({
                ...column,
                key: JSON.stringify(column.spots),
            }));
            for (const { spots, size } of columns.sort((a, b) => (a.key < b.key ? -1 : 1))) {
                for (const spot of spots) {
                    spot.x += left;
                    spot.right += left;
                }
                left += size;
            }
            const ordered = columns.flatMap(({ spots }) => spots);
            return { times, height: size, spots: ordered, key: JSON.stringify(ordered) };
        });
    });
    const gathered = gather(strips.sort((a, b) => b.height - a.height));
    return { times, strips: gathered, key: JSON.stringify(gathered.map(({ times, key }) => [times, key])) };
}));

export { readable };
