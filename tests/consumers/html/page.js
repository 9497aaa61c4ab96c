const backing = document.querySelector('quilt-backing');
const write = (id, text) => {
  document.getElementById(id).textContent = text;
};

document.getElementById('wider').addEventListener('click', () => backing.setAttribute('width', '80'));
backing.addEventListener('input', () => write('typed', backing.result.buy?.text ?? ''));
backing.addEventListener('change', () => write('left', backing.value));
