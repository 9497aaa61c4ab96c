const after = (lead, asDrawn, words) => asDrawn ? `${lead}: ${words}` : words;
/** What a strip gives. `lead` comes first if only the drawing says how it is cut. */
const piecesGiven = ({ gives, asDrawn }, t, lead) => after(lead, asDrawn, gives.map(({ piece, count }) => `${count} × ${t.say(piece)}`).join(', '));
/** The same with the size of each piece. What has one name and one size is counted together. */
const sizesGiven = ({ gives, asDrawn }, t, lead) => {
    const counts = new Map();
    for (const { piece, count, size } of gives) {
        const words = `${t.say(piece)}${size ? `, ${t.size(size)}` : ''}`;
        counts.set(words, (counts.get(words) ?? 0) + count);
    }
    return after(lead, asDrawn, Array.from(counts, ([words, count]) => `${count} × ${words}`).join('; '));
};

export { piecesGiven, sizesGiven };
