/** The server's time on this device, without trusting the device's clock. */
import { useEffect, useRef, useState } from 'preact/hooks';

/** Milliseconds of server time since `now` was received; takes the longer of two measures, so that a phone that slept is never young. */
function elapsedSince(mark: { wall: number; steady: number }): number {
  return Math.max(Date.now() - mark.wall, performance.now() - mark.steady, 0);
}

/** Server time in milliseconds, ticking every second from the `now` that came with a view. */
export function useServerTime(now: string): number {
  const [time, setTime] = useState(() => Date.parse(now));
  useEffect(() => {
    const mark = { wall: Date.now(), steady: performance.now() };
    const tick = () => setTime(Date.parse(now) + elapsedSince(mark));
    tick();
    const timer = setInterval(tick, 1000);
    document.addEventListener('visibilitychange', tick);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', tick);
    };
  }, [now]);
  return time;
}

/**
 * When the person answers, as ISO 8601 by the server's clock: a phone whose own clock is slow must not make every answer
 * look old. What the phone can't hide is how long ago the view came, and that is counted.
 */
export function useAnswerTime(now: string): () => string {
  const mark = useRef({ now, wall: Date.now(), steady: performance.now() });
  if (mark.current.now !== now) mark.current = { now, wall: Date.now(), steady: performance.now() };
  return () => new Date(Date.parse(mark.current.now) + elapsedSince(mark.current)).toISOString();
}

/** False while the page is as the server drew it, so that the first drawing in the browser is the same. */
export function useSettled(): boolean {
  const [settled, setSettled] = useState(false);
  useEffect(() => setSettled(true), []);
  return settled;
}
