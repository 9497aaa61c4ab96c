/** How strongly an operation binds. A weaker one inside it gets brackets. */
const STRENGTH = {
    up: 0,
    step: 0,
    mark: 0,
    coin: 0,
    '+': 1,
    '−': 1,
    '×': 2,
    '×√2': 2,
    '÷': 2,
    '÷√2': 2,
};
const strengthOf = ({ operation }) => STRENGTH[operation] ?? 3;
const bracketed = (quantity, least, t) => {
    const text = formulaOf(quantity, t);
    return strengthOf(quantity) < least ? `(${text})` : text;
};
/** A formula with its numbers filled in: `58 + 2 × 4`. */
const formulaOf = (quantity, t) => {
    const { operation, parts } = quantity;
    const [first, second] = parts;
    if (!first || operation === 'row' || operation === 'number' || operation === 'result')
        return t.n(quantity);
    const side = (part, least) => bracketed(part, least, t);
    switch (operation) {
        case '√':
            return `√(${formulaOf(first, t)})`;
        case '×√2':
            return `${side(first, 2)} × √2`;
        case '÷√2':
            return `${side(first, 2)} ÷ √2`;
        case 'up':
        case 'step':
        case 'mark':
        case 'coin':
            return t.rounded(operation, formulaOf(first, t), second ?? first);
        case '+':
            return `${side(first, 1)} + ${second ? side(second, 1) : ''}`;
        case '−':
            return `${side(first, 1)} − ${second ? side(second, 2) : ''}`;
        case '×':
            return `${side(first, 2)} × ${second ? side(second, 2) : ''}`;
        case '÷':
            return `${side(first, 2)} ÷ ${second ? side(second, 3) : ''}`;
    }
};

export { formulaOf };
