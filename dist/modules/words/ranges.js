/** Whole numbers in order, with neighbours together: `1–3, 5`. */
const ranges = (numbers) => {
    const runs = [];
    for (const number of numbers) {
        const last = runs.at(-1);
        if (last && number === last[1] + 1)
            last[1] = number;
        else
            runs.push([number, number]);
    }
    return runs
        .map(([from, to]) => (to > from + 1 ? `${from}–${to}` : to > from ? `${from}, ${to}` : `${from}`))
        .join(', ');
};

export { ranges };
