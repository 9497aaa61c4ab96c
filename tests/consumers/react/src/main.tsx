import { StrictMode, useRef, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { type QuiltBacking } from 'quilt-reckoner/backing';
import 'quilt-reckoner/backing';

const App = () => {
  const [width, setWidth] = useState('58');
  const [typed, setTyped] = useState('');
  const [left, setLeft] = useState('');
  const backing = useRef<QuiltBacking>(null);
  return (
    <>
      <button id="wider" type="button" onClick={() => setWidth('80')}>
        Wider
      </button>
      <quilt-backing
        ref={backing}
        width={width}
        length={70}
        fabric-width="40"
        oneWay={false}
        className="backing"
        onInput={(event) => setTyped(event.currentTarget.result.buy?.text ?? '')}
        onChange={() => setLeft(backing.current?.value ?? '')}
      >
        <p>Buy 3 3/4 yd.</p>
      </quilt-backing>
      <p>
        Typed: <output id="typed">{typed}</output>, left: <output id="left">{left}</output>
      </p>
    </>
  );
};

createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
