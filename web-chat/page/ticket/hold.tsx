/** Counts the seconds for which the resistor is held on a pair, once for each pair. Works without contact. */
import { useEffect, useRef, useState } from 'preact/hooks';

/** Milliseconds between two looks at the clock. */
const LOOK = 100;

export function Hold({ seconds }: { seconds: string }) {
  const whole = Number(seconds) * 1000;
  const [left, setLeft] = useState<number | null>(null);
  const [held, setHeld] = useState(0);
  const end = useRef(0);
  const runs = left !== null;
  useEffect(() => {
    if (!runs) return;
    const timer = setInterval(() => {
      const rest = end.current - performance.now();
      if (rest > 0) return setLeft(rest);
      setLeft(null);
      setHeld((count) => count + 1);
      // Felt through a glove, where the phone can.
      navigator.vibrate?.(400);
    }, LOOK);
    return () => clearInterval(timer);
  }, [runs]);
  const start = () => {
    end.current = performance.now() + whole;
    setLeft(whole);
  };
  return (
    <div class="hold">
      <button type="button" class="key" onClick={() => (runs ? setLeft(null) : start())}>
        {runs ? 'Slipped off' : held === 0 ? `Count ${seconds}\u2009s` : `Next pair: ${seconds}\u2009s`}
      </button>
      <p role="timer" aria-label="Seconds left">
        {runs ? `${Math.ceil(left / 1000)}\u2009s` : ''}
      </p>
      <p role="status">{!runs && held > 0 ? `Held: ${held} ${held === 1 ? 'time' : 'times'}` : ''}</p>
    </div>
  );
}
