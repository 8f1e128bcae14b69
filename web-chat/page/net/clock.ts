/** The server's time on this device, without trusting the device's clock. */
import { useEffect, useState } from 'preact/hooks';

/** When a view came: by the device's clock, and by one that nobody sets. Milliseconds. */
export interface Received {
  readonly wall: number;
  readonly steady: number;
}
export const receivedNow = (): Received => ({ wall: Date.now(), steady: performance.now() });
/** A kept view: the steady clock began anew since. */
export const receivedAt = (wall: number): Received => ({ wall, steady: performance.now() });

/** So long that nothing stands any more, milliseconds. */
const VERY_LONG = 86_400_000;

/**
 * Milliseconds of server time since a view was received; the longer of two measures, so that a phone that slept is
 * never young. A clock that was set back says nothing: then it is long ago.
 */
function elapsedSince({ wall, steady }: Received): number {
  const [byWall, bySteady] = [Date.now() - wall, performance.now() - steady];
  return byWall < -60_000 ? VERY_LONG : Math.max(byWall, bySteady, 0);
}

/** Server time in milliseconds, ticking every second from the `now` that came with a view. */
export function useServerTime(now: string, received: Received): number {
  const [time, setTime] = useState(() => Date.parse(now));
  useEffect(() => {
    const tick = () => setTime(serverTime(now, received));
    tick();
    const timer = setInterval(tick, 1000);
    document.addEventListener('visibilitychange', tick);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', tick);
    };
  }, [now, received]);
  return time;
}

/**
 * Now by the server's clock, in milliseconds: a phone whose own clock is slow must not make every answer look old. What
 * the phone can't hide is how long ago the view came, and that is counted.
 */
export const serverTime = (now: string, received: Received): number => Date.parse(now) + elapsedSince(received);

/** False while the page is as the server drew it, so that the first drawing in the browser is the same. */
export function useSettled(): boolean {
  const [settled, setSettled] = useState(false);
  useEffect(() => setSettled(true), []);
  return settled;
}
