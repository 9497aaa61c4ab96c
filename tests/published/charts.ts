/**
 * "Setting triangles" chart, lukas.is-a-geek.org/tani/chart.htm: finished block, square for four side triangles, square
 * for two corner triangles, in inches, rounded up to 1/8. 6 in agrees with the worked example in "On-point settings",
 * Moonlight Quilters. 13 √2 + 1 1/4 = 19.6348…, above 19 5/8 by 0.0098 in: the chart goes on to the next mark.
 * 16 √2 + 1 1/4 = 23.8774…, above 23 7/8 by 0.0024 in: the chart keeps the mark.
 */
export const SETTING_TRIANGLES = [
  ['5', '8 3/8', '4 1/2'],
  ['6', '9 3/4', '5 1/8'],
  ['7', '11 1/4', '5 7/8'],
  ['8', '12 5/8', '6 5/8'],
  ['9', '14', '7 1/4'],
  ['10', '15 1/2', '8'],
  ['11', '16 7/8', '8 3/4'],
  ['12', '18 1/4', '9 3/8'],
  ['13', '19 3/4', '10 1/8'],
  ['14', '21 1/8', '10 7/8'],
  ['15', '22 1/2', '11 1/2'],
  ['16', '23 7/8', '12 1/4'],
] as const;

/**
 * "Number of squares from a fat quarter" (18 × 22 in), Pieceful Living, 13 August 2011: the square’s cut side, and how
 * many. A row holds ⌊18 ÷ side⌋ and there are ⌊22 ÷ side⌋ rows; the published counts are just that.
 */
export const FAT_QUARTER_SQUARES = [
  ['2', 99],
  ['2 1/2', 56],
  ['3', 42],
  ['3 1/2', 30],
  ['4', 20],
  ['4 1/2', 16],
  ['5', 12],
  ['5 1/2', 12],
  ['6', 9],
  ['6 1/2', 6],
] as const;
