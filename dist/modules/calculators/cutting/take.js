/** What a list or a block takes from one of its fabrics. */
const takeOf = ({ fabric, need, sheets: count = 0, width, sold, used: { cuts, cost, sheet, plan } }, oneWay) => ({
    fabric,
    need,
    width,
    sold,
    cuts,
    pieces: cuts.map(({ piece, width, length, count }) => ({ piece, width, length, count, turn: !oneWay })),
    plan,
    ...(sheet && { sheets: { sheet, count }, cost }),
});

export { takeOf };
