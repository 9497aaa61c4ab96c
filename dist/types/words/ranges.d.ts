/** Whole numbers in order, with neighbours together: `1–3, 5`. */
export declare const ranges: (numbers: number[]) => string;
