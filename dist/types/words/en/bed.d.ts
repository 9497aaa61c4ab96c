/** What is said of a bed, in English. */
export declare const bed: {
    labels: {
        bed: string;
        mattress: string;
        drop: string;
        tuck: string;
        bedWidth: string;
        bedLength: string;
    };
    hints: {
        drop: string;
    };
    options: {
        bed: {
            '60x120': string;
            '70x140': string;
            "90x190": string;
            "90x200": string;
            "120x200": string;
            "135x190": string;
            "140x200": string;
            "150x200": string;
            "160x200": string;
            "180x200": string;
            "200x200": string;
            none: string;
            crib: string;
            twin: string;
            'twin-long': string;
            full: string;
            queen: string;
            king: string;
            'california-king': string;
        };
    };
    sentences: {
        size: (size: import("../../ledger/quilt.js").Size<import("fraction.js").default>, t: import("../teller.js").Teller) => string;
        measureYours: string;
        notForCrib: string;
    };
};
