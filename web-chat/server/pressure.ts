/**
 * Whether the machine keeps up: how far the event loop lags, and how much of the heap is in use. Looked at every second,
 * and believed when it is so twice in succession: one long step alone, such as laying the manual, is no pressure, and
 * would turn away the only person who is there.
 */
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { getHeapStatistics } from 'node:v8';

const EVERY = 1_000;
const RESOLUTION = 10;
/** Share of the heap that may be in use. Ours. */
const MOST_HEAP = 0.9;

export interface Pressure {
  /** Milliseconds, the mean of the last second; the lesser of the last two. */
  readonly lag: () => number;
  readonly heapIsFull: () => boolean;
  readonly stop: () => void;
}

export function watchPressure(): Pressure {
  const histogram = monitorEventLoopDelay({ resolution: RESOLUTION });
  histogram.enable();
  let lags: readonly [number, number] = [0, 0];
  let full: readonly [boolean, boolean] = [false, false];
  const look = (): void => {
    // Where nothing was measured, the loop did not get round at all.
    const mean = Number.isNaN(histogram.mean) ? EVERY : Math.max(0, histogram.mean / 1e6 - RESOLUTION);
    histogram.reset();
    const heap = getHeapStatistics();
    lags = [lags[1], mean];
    full = [full[1], heap.used_heap_size > heap.heap_size_limit * MOST_HEAP];
  };
  const timer = setInterval(look, EVERY).unref();
  return {
    lag: () => Math.min(...lags),
    heapIsFull: () => full[0] && full[1],
    stop() {
      clearInterval(timer);
      histogram.disable();
    },
  };
}
