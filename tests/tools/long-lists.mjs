/** A cut list that is planned at once. */
export const TEN = Array.from(
  { length: 10 },
  (_, at) => `A | p${at} | ${2 + at / 2} x ${3 + (at % 3)} | 1`,
).join('\n');

/** Cut lists of a thousand pieces. */
export const THOUSAND = {
  '8 sizes': Array.from({ length: 8 }, (_, at) => `A | p${at} | ${2 + at / 2} x ${3 + (at % 3)} | 125`).join(
    '\n',
  ),
  '200 sizes': Array.from(
    { length: 200 },
    (_, at) => `A | p${at} | ${16 + ((at * 37) % 80)}/8 x ${16 + ((at * 53) % 71)}/8 | 5`,
  ).join('\n'),
};

/**
 * Runs in a page with a cutting plan: pastes a list, and waits for its plan.
 * @param {string} list
 * @param {string} interrupt A list that is pasted while the first is being planned.
 */
export const pasted = async (list, interrupt = '') => {
  const element = document.querySelector('quilt-cutting');
  const paste = (text) => {
    const cell = element.shadowRoot.querySelector('#list');
    cell.focus();
    if (cell.localName === 'textarea') {
      // The browser itself takes time to put 200 lines into a text area. That is not measured.
      cell.value = text;
      cell.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
      return;
    }
    const clipboardData = new globalThis.DataTransfer();
    clipboardData.setData('text/plain', `${text}\n`);
    cell.dispatchEvent(
      new globalThis.ClipboardEvent('paste', {
        clipboardData,
        bubbles: true,
        composed: true,
        cancelable: true,
      }),
    );
  };
  const isPlanning = (element) => JSON.stringify(element.result.errors ?? '').includes('being planned');
  const turn = () => new Promise((done) => setTimeout(done));
  const planned = async (element) => {
    let turns = 0;
    for (; isPlanning(element); turns += 1) await turn();
    return turns;
  };
  paste('A | square | 3 | 1');
  await planned(element);
  await element.updateComplete;
  let events = 0;
  element.addEventListener('change', () => (events += 1));
  let longest = 0;
  const watch = new PerformanceObserver((tasks) => {
    for (const { duration } of tasks.getEntries()) longest = Math.max(longest, duration);
  });
  watch.observe({ type: 'longtask' });

  paste(list);
  if (interrupt) {
    await turn();
    if (!isPlanning(element)) throw new Error('There was nothing to interrupt.');
    paste(interrupt);
  }
  const turns = await planned(element);
  if (interrupt) {
    // Waits as long as the plan of the first list would have taken.
    const other = Object.assign(document.createElement('quilt-cutting'), { list });
    document.body.append(other);
    await planned(other);
  }
  for (let more = 0; more < 10; more += 1) await turn();
  watch.disconnect();
  return { turns, longest, pieces: element.result.layout?.length ?? 0, events };
};
