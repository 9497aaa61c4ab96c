/** Those that fit come first. Among them the cheapest comes first; those without a price come after, by area. */
const rankPackages = (packages, need) => packages
    .map((pack) => {
    const straight = pack.width.gte(need.width) && pack.length.gte(need.length);
    const turned = !straight && pack.width.gte(need.length) && pack.length.gte(need.width);
    return { ...pack, fits: straight || turned, turned };
})
    .sort((a, b) => {
    const area = a.width.mul(a.length).compare(b.width.mul(b.length));
    const price = a.price && b.price ? a.price.compare(b.price) : Number(!a.price) - Number(!b.price);
    return Number(b.fits) - Number(a.fits) || price || area;
});

export { rankPackages };
