export { wholeQuilt } from '../workbook/whole-quilt.js';

/** The looks that a drawing takes from the styles of its page, besides colours. */
const LOOKS = [
    'stroke-width',
    'stroke-dasharray',
    'stroke-linejoin',
    'paint-order',
    'font-family',
    'font-size',
    'text-anchor',
    'dominant-baseline',
];
/** How many pixels the longer side of a picture has. */
const LONGER = 2400;
/** A colour in the plainest way, which every program reads: red, green and blue, and how much it covers. */
const plainColour = (colour) => {
    const parts = /^rgba?\(([^)]*)\)$/
        .exec(colour)?.[1]
        ?.match(/[\d.]+/g)
        ?.map(Number) ?? painted(colour);
    const [red = 0, green = 0, blue = 0, cover = 1] = parts;
    const hex = [red, green, blue].map((part) => Math.round(part).toString(16).padStart(2, '0'));
    return { colour: `#${hex.join('')}`, cover };
};
/** The parts of a colour that is written in another way: as a canvas shows it. */
const painted = (colour) => {
    const canvas = document.createElement('canvas').getContext('2d');
    if (!canvas)
        return [];
    canvas.fillStyle = colour;
    canvas.fillRect(0, 0, 1, 1);
    const [red = 0, green = 0, blue = 0, cover = 255] = canvas.getImageData(0, 0, 1, 1).data;
    return [red, green, blue, cover / 255];
};
/** The colour behind a drawing: that of the first thing around it that has one. */
const behind = (drawing) => {
    for (let at = drawing; at; at = around(at)) {
        const { backgroundColor } = getComputedStyle(at);
        const { colour, cover } = plainColour(backgroundColor);
        if (cover === 1)
            return colour;
    }
    return '#ffffff';
};
const around = (element) => {
    const { parentElement, parentNode } = element;
    return parentElement ?? (parentNode instanceof ShadowRoot ? parentNode.host : null);
};
/** Gives a copy the looks that the styles of the page give the original. */
const withLooks = (original, copy) => {
    const style = getComputedStyle(original);
    for (const name of ['fill', 'stroke']) {
        const value = style.getPropertyValue(name);
        if (value === 'none' || value.startsWith('url(')) {
            copy.setAttribute(name, value.replaceAll('"', ''));
            continue;
        }
        const { colour, cover } = plainColour(value);
        copy.setAttribute(name, colour);
        if (cover < 1)
            copy.setAttribute(`${name}-opacity`, cover.toFixed(3));
    }
    for (const name of LOOKS)
        copy.setAttribute(name, style.getPropertyValue(name));
    for (const name of ['class', 'part'])
        copy.removeAttribute(name);
};
/** A picture from its address. Undefined if it cannot be read, such as from another site that does not allow it. */
const imageAt = async (address) => {
    const image = Object.assign(new Image(), { crossOrigin: 'anonymous', src: address });
    try {
        await image.decode();
        return image;
    }
    catch {
        return undefined;
    }
};
/** A canvas in this size, to paint on. */
const canvasOf = (width, height) => {
    const canvas = Object.assign(document.createElement('canvas'), { width, height });
    const on = canvas.getContext('2d');
    if (!on)
        throw new Error('2d');
    return { canvas, on };
};
/** The picture itself, as an address that holds it. */
const held = async (address) => {
    if (address.startsWith('data:'))
        return address;
    const image = await imageAt(address);
    if (!image)
        return undefined;
    const { canvas, on } = canvasOf(image.naturalWidth, image.naturalHeight);
    on.drawImage(image, 0, 0);
    return canvas.toDataURL();
};
/** Puts pictures into the file itself, and leaves out those that cannot be read. */
const holdPictures = async (copy) => {
    for (const image of copy.querySelectorAll('image')) {
        const address = await held(image.getAttribute('href') ?? '');
        if (address)
            image.setAttribute('href', address);
        else
            image.remove();
    }
};
const NAMESPACE = 'http://www.w3.org/2000/svg';
/** A copy of a drawing that stands alone: with its colours, its background and its pictures. */
const standalone = async (drawing) => {
    const copy = drawing.cloneNode(true);
    const originals = [...drawing.querySelectorAll('*')];
    for (const [at, inner] of [...copy.querySelectorAll('*')].entries()) {
        const original = originals[at];
        if (original && /^(path|text|rect)$/.test(inner.localName))
            withLooks(original, inner);
    }
    const marks = document.createTreeWalker(copy, NodeFilter.SHOW_COMMENT);
    const comments = [];
    while (marks.nextNode())
        comments.push(marks.currentNode);
    for (const comment of comments)
        comment.parentNode?.removeChild(comment);
    await holdPictures(copy);
    const title = document.createElementNS(NAMESPACE, 'title');
    title.textContent = copy.getAttribute('aria-label');
    const ground = document.createElementNS(NAMESPACE, 'rect');
    for (const [name, value] of Object.entries({ width: '100%', height: '100%', fill: behind(drawing) }))
        ground.setAttribute(name, value);
    copy.prepend(title, ground);
    for (const name of ['class', 'part'])
        copy.removeAttribute(name);
    return copy;
};
/** The size of a drawing, in its own units. */
const sizeOf = (drawing) => {
    const [, , width = 1, height = 1] = (drawing.getAttribute('viewBox') ?? '').split(' ').map(Number);
    return { width, height };
};
/** A drawing as an SVG file. */
const svgFile = async (drawing) => {
    const copy = await standalone(drawing);
    for (const [name, value] of Object.entries(sizeOf(drawing)))
        copy.setAttribute(name, `${value * 2}`);
    return new Blob([new XMLSerializer().serializeToString(copy)], { type: 'image/svg+xml' });
};
/** What a shape is filled with, where that is the picture of a swatch; its wash if the picture cannot be read. */
const patternOf = async (on, drawing, fill) => {
    const name = /#([^"')]+)/.exec(fill)?.[1];
    const pattern = [...drawing.querySelectorAll('pattern')].find(({ id }) => id === name);
    const [shape, picture] = [pattern?.querySelector('rect'), pattern?.querySelector('image')];
    if (!shape || !picture)
        return undefined;
    const image = await imageAt(picture.getAttribute('href') ?? '');
    if (!image)
        return getComputedStyle(shape).fill;
    // A swatch fills its tile, as on the page.
    const side = Number(shape.getAttribute('width'));
    const scale = side / Math.min(image.naturalWidth || side, image.naturalHeight || side);
    const made = on.createPattern(image, 'repeat');
    made?.setTransform(new DOMMatrix().scale(scale));
    return made ?? undefined;
};
/** Paints one element of a drawing as the page shows it. A canvas needs no leave of the page, as a picture from an address would. */
const paint = async (on, drawing, element) => {
    const style = getComputedStyle(element);
    const path = element.localName === 'path' ? new Path2D(element.getAttribute('d') ?? '') : undefined;
    const text = element.textContent ?? '';
    const fill = async () => {
        if (style.fill === 'none')
            return;
        const pattern = style.fill.startsWith('url(') ? await patternOf(on, drawing, style.fill) : style.fill;
        if (pattern === undefined)
            return;
        const { colour, cover } = typeof pattern === 'string' ? plainColour(pattern) : { colour: pattern, cover: 1 };
        Object.assign(on, { fillStyle: colour, globalAlpha: cover });
        if (path)
            on.fill(path);
        else
            on.fillText(text, 0, 0);
    };
    const stroke = () => {
        if (style.stroke === 'none')
            return;
        const { colour, cover } = plainColour(style.stroke);
        Object.assign(on, { strokeStyle: colour, globalAlpha: cover, lineWidth: parseFloat(style.strokeWidth) });
        on.setLineDash(style.strokeDasharray.match(/[\d.]+/g)?.map(Number) ?? []);
        if (path)
            on.stroke(path);
        else
            on.strokeText(text, 0, 0);
    };
    on.font = `${style.fontSize} ${style.fontFamily}`;
    // Words have their line under them, so that it does not make them thinner.
    if (!path)
        stroke();
    await fill();
    if (path)
        stroke();
};
/** The same as a PNG file. */
const pngFile = async (drawing) => {
    const { width, height } = sizeOf(drawing);
    const scale = LONGER / Math.max(width, height);
    const { canvas, on } = canvasOf(Math.round(width * scale), Math.round(height * scale));
    on.fillStyle = behind(drawing);
    on.fillRect(0, 0, canvas.width, canvas.height);
    Object.assign(on, { textAlign: 'center', textBaseline: 'middle', lineJoin: 'round' });
    const back = drawing.getScreenCTM()?.inverse();
    for (const element of drawing.querySelectorAll(':is(path,text)')) {
        const place = element.getScreenCTM();
        if (!back || !place)
            continue;
        on.setTransform(new DOMMatrix().scale(scale).multiply(back.multiply(place)));
        await paint(on, drawing, element);
    }
    return new Promise((done, fail) => canvas.toBlob((blob) => (blob ? done(blob) : fail(new Error('toBlob'))), 'image/png'));
};

export { pngFile, svgFile };
