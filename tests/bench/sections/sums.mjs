/**
 * Sums of three calculators, as anyone would write them in a spreadsheet: a name and an expression a line, in order. `up` and
 * `down` go to the next multiple; all lengths are in inches.
 */
export const SUMS = {
  backing: {
    given: { width: 58, length: 70, overage: 4, cloth: 40, seam: 1 / 2 },
    lines: [
      ['needWidth', 'width + 2 * overage'],
      ['needLength', 'length + 2 * overage'],
      ['reach', 'cloth - 2 * seam'],
      ['panelsLengthwise', 'up((needWidth - 2 * seam) / reach, 1)'],
      ['panelsCrosswise', 'up((needLength - 2 * seam) / reach, 1)'],
      ['clothLengthwise', 'panelsLengthwise * needLength'],
      ['clothCrosswise', 'panelsCrosswise * needWidth'],
      ['need', 'min(clothLengthwise, clothCrosswise)'],
      ['buy', 'up(need / 36, 1 / 8)'],
      ['spare', 'buy * 36 - need'],
    ],
  },
  binding: {
    given: { width: 58, length: 70, strip: 5 / 2, cloth: 40 },
    lines: [
      ['around', '2 * (width + length)'],
      ['long', 'around + 10'],
      ['strips', 'up((long - strip) / (cloth - strip), 1)'],
      ['need', 'strips * strip'],
      ['buy', 'up(need / 36, 1 / 8)'],
      ['spare', 'buy * 36 - need'],
      ['fatStrips', 'up((long - strip) / (20 - strip), 1)'],
      ['fatQuarters', 'up(fatStrips / down(18 / strip, 1), 1)'],
    ],
  },
  batting: {
    given: { width: 58, length: 70, overage: 4, roll: 96 },
    lines: [
      ['needWidth', 'width + 2 * overage'],
      ['needLength', 'length + 2 * overage'],
      ['widths', 'up(needLength / roll, 1)'],
      ['need', 'min(widths * needWidth, up(needWidth / roll, 1) * needLength)'],
      ['buy', 'up(need / 36, 1 / 8)'],
      ['spare', 'buy * 36 - need'],
    ],
  },
};

/** The sums as mathjs makes them, exactly: a function from the quilt's width to the amount to buy. */
export const inMathjs = ({ create, all }, { given, lines }) => {
  const math = create(all, { number: 'Fraction' });
  const steps = lines.map(([name, expression]) => math.compile(`${name} = ${expression}`));
  const toStep = (round) => (value, step) => math.multiply(round(math.divide(value, step)), step);
  const fixed = Object.entries(given).map(([name, value]) => [name, math.fraction(value)]);
  return (width) => {
    const scope = { ...Object.fromEntries(fixed), up: toStep(math.ceil), down: toStep(math.floor) };
    scope.width = math.fraction(width);
    for (const step of steps) step.evaluate(scope);
    return math.number(scope.buy);
  };
};

/** The same as a sheet of hyperformula's, the given values and then the sums one below another. */
export const inHyperformula = ({ HyperFormula }, { given, lines }) => {
  const names = [...Object.keys(given), ...lines.map(([name]) => name)];
  const formula = (expression) =>
    `=${expression.replace(/[a-z]+/gi, (word) =>
      names.includes(word)
        ? `A${names.indexOf(word) + 1}`
        : { up: 'CEILING', down: 'FLOOR', min: 'MIN' }[word],
    )}`;
  const column = [...Object.values(given), ...lines.map(([, expression]) => formula(expression))];
  const sheet = HyperFormula.buildFromArray(
    column.map((cell) => [cell]),
    { licenseKey: 'gpl-v3' },
  );
  const at = (name) => ({ sheet: 0, col: 0, row: names.indexOf(name) });
  return (width) => {
    sheet.setCellContents(at('width'), width);
    return sheet.getCellValue(at('buy'));
  };
};
