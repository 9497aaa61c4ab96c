// The shop's own script. It listens to the calculators' events, reads their results, and keeps the basket.
const PRICE = 19.8;
const KIT_PRICE = 179;
const BOLT = 5.5;

const euros = new Intl.NumberFormat('en-IE', { style: 'currency', currency: 'EUR' });
const find = (selector) => document.querySelector(selector);
const backing = find('quilt-backing');
const batting = find('quilt-batting');
const [plain, kits] = [find('#plain'), find('#kits')];
const said = find('.said');

/** Yards as the shop writes them: 2.25 is `2 1/4`. */
const yards = (amount) => {
  const [whole, eighths] = [Math.floor(amount), Math.round((amount % 1) * 8)];
  const part = [8, 4, 2].includes(8 / eighths) ? `1/${8 / eighths}` : eighths === 6 ? '3/4' : `${eighths}/8`;
  return [whole || !eighths ? `${whole}` : '', eighths ? part : ''].filter(Boolean).join(' ');
};

// The basket

/** @type {{ words: string, cost: number, yards?: number }[]} */
let basket = [];

const left = () => BOLT - basket.reduce((sum, item) => sum + (item.yards ?? 0), 0);

const put = (item) => {
  basket.push(item);
  show();
  said.textContent = `${item.words} is in your basket.`;
};

const remove = (item) => {
  basket = basket.filter((other) => other !== item);
  show();
  said.textContent = `${item.words} is out of your basket.`;
  find('#basket').focus();
};

const line = (item) => {
  const row = document.createElement('li');
  const [words, cost, button] = ['span', 'span', 'button'].map((tag) => document.createElement(tag));
  words.textContent = item.words;
  cost.textContent = euros.format(item.cost);
  button.type = 'button';
  button.textContent = 'Remove';
  button.setAttribute('aria-label', `Remove ${item.words}`);
  button.addEventListener('click', () => remove(item));
  row.append(words, cost, button);
  return row;
};

const show = () => {
  find('#basket ul').replaceChildren(...basket.map(line));
  find('.empty').hidden = basket.length > 0;
  find('.total').hidden = basket.length === 0;
  find('#total').value = euros.format(basket.reduce((sum, { cost }) => sum + cost, 0));
  find('#count').value = basket.length;
  // The cloth in the basket is no longer on the bolt.
  const onBolt = left();
  find('#stock').textContent = onBolt ? `${yards(onBolt)} yd left on the bolt` : 'Sold out';
  plain.elements.yards.max = onBolt;
  plain.querySelector('button').disabled = onBolt === 0;
  backing.max = `${yards(onBolt)} yd`;
  price(backing);
};

// The calculators

/** Says that we do not sell this, or empty if we do. We sell batting in packages, never from a roll. */
const notSold = ({ localName, result: { buy } }) =>
  localName === 'quilt-batting' && buy && buy.unit !== 'package'
    ? `This takes batting from a roll, ${buy.text}, and we sell packages. Ask us, or write a smaller quilt, like 72 × 86 in.`
    : '';

/** Shows what this costs now, and whether it can be bought. */
const price = (calculator) => {
  calculator.setCustomValidity(notSold(calculator));
  const { form, result, validity, validationMessage } = calculator;
  form.querySelector('.add').disabled = !validity.valid;
  form.querySelector('.sum').value = validity.valid
    ? `${result.buy.text}: ${euros.format(result.cost.amount)}`
    : validationMessage;
};

await Promise.all(['quilt-backing', 'quilt-batting'].map((name) => customElements.whenDefined(name)));
for (const calculator of [backing, batting]) {
  for (const type of ['input', 'change']) calculator.addEventListener(type, () => price(calculator));
  // So a script that reads the form can never take yards for packages.
  calculator.form.addEventListener('formdata', ({ formData }) => {
    if (notSold(calculator)) formData.delete(calculator.name);
  });
  // The reset event comes before the fields have their first values again.
  calculator.form.addEventListener('reset', () => setTimeout(price, 0, calculator));
  calculator.form.addEventListener('submit', (event) => {
    event.preventDefault();
    const { buy, cost } = calculator.result;
    const amount = new FormData(calculator.form).get('yards');
    const words = amount ? `Long Horizon, ${buy.text}` : `Batting, ${buy.text}`;
    put({ words, cost: Number(cost.amount), ...(amount && { yards: Number(amount) }) });
  });
}
// After "back", the browser fills the fields with the old text.
addEventListener('pageshow', () => [backing, batting].forEach(price));

plain.addEventListener('submit', (event) => {
  event.preventDefault();
  const amount = Number(plain.elements.yards.value);
  put({ words: `Long Horizon, ${yards(amount)} yd`, cost: amount * PRICE, yards: amount });
});
kits.addEventListener('submit', (event) => {
  event.preventDefault();
  const count = Number(kits.elements.kits.value);
  put({ words: `Low Tide kit × ${count}`, cost: count * KIT_PRICE });
});
show();
price(batting);
