/** Lets the page draw and answer before a long work goes on; unlike a timer, it isn't slowed in a hidden page. */
const breathe = () => new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
        port1.close();
        done();
    };
    port2.postMessage(0);
});

export { breathe };
