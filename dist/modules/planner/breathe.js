/** Lets the page draw and react before long work goes on. A timer would do, but browsers slow timers in a hidden page. */
const breathe = () => new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
        port1.close();
        done();
    };
    port2.postMessage(0);
});

export { breathe };
