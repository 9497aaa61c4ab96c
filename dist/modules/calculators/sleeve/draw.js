import { say } from './shape.js';

/** The quilt's top edge from behind, with the sleeve along it. */
const draw = ({ finished, used, summary }) => {
    const quilt = used.quilt.valueOf();
    const [long, deep, short] = [finished.width.valueOf(), finished.length.valueOf(), used.short.valueOf()];
    const gap = deep / 8;
    const tall = Math.max(deep * 2, quilt / 4);
    return [
        {
            title: say('picture', { summary }),
            width: quilt,
            height: tall,
            boxes: [
                { x: 0, y: 0, width: quilt, height: tall, is: 'quilt' },
                { x: short, y: gap, width: long, height: deep, is: 'cloth', label: say('sleeve') },
            ],
            dimensions: [
                { side: 'top', from: 0, to: quilt, text: used.quilt },
                { side: 'bottom', from: short, to: short + long, text: say('sleeveSide', { side: finished.width }) },
                { side: 'right', from: gap, to: gap + deep, text: finished.length },
            ],
        },
    ];
};

export { draw };
