// The shop's own basket: it listens to its forms and reads what the calculators hand them, as any shop's script could.
const basket = document.querySelector('#basket');

const put = (words) => {
  document.querySelector('#empty').hidden = true;
  const line = document.createElement('li');
  line.textContent = words;
  basket.append(line);
};

for (const form of document.forms)
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const data = new FormData(form);
    const said = form.querySelector('.said');
    const calculator = form.querySelector('quilt-backing, quilt-batting');
    if (!calculator) {
      put(`Long Horizon, ${data.get('typed')} yd`);
      said.textContent = 'In your basket.';
      return;
    }
    const { buy, cost } = calculator.result;
    put(`${form.id === 'backing' ? 'Long Horizon' : 'Batting'}, ${buy.text}${cost ? `, ${cost.text}` : ''}`);
    said.textContent = 'In your basket.';
  });
