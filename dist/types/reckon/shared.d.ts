/** The finished quilt's two sides. */
export declare const quiltFields: {
    readonly width: {
        readonly kind: "length";
        readonly label: "Quilt width";
    };
    readonly length: {
        readonly kind: "length";
        readonly label: "Quilt length";
    };
};
/** The cloth as it lies in the shop. */
export declare const clothFields: {
    readonly fabricWidth: {
        readonly kind: "length";
        readonly label: "Usable width of the cloth";
        readonly initial: "40 in";
        readonly hint: "selvages off; measure yours";
    };
};
/** How the cloth is washed, sold and priced. */
export declare const shopFields: {
    readonly shrinkage: {
        readonly kind: "percent";
        readonly label: "Shrinkage";
        readonly initial: "0";
        readonly hint: "cotton about 3 % when prewashed";
        readonly more: true;
    };
    readonly increment: {
        readonly kind: "step";
        readonly label: "The shop cuts by";
        readonly initial: {
            readonly in: "1/8 yd";
            readonly cm: "10 cm";
        };
        readonly more: true;
    };
    readonly price: {
        readonly kind: "money";
        readonly label: "Price of a yard or metre";
        readonly optional: true;
        readonly more: true;
    };
    readonly currency: {
        readonly kind: "text";
        readonly label: "Currency";
        readonly optional: true;
        readonly more: true;
        readonly pattern: RegExp;
        readonly example: "EUR";
    };
};
/** What the reader's ruler marks; cut sizes fall on it. */
export declare const markField: {
    readonly mark: {
        readonly kind: "mark";
        readonly label: "Cut to marks of";
        readonly initial: {
            readonly in: "1/8 in";
            readonly cm: "1 mm";
        };
        readonly more: true;
    };
};
