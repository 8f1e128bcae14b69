import { useEffect } from 'preact/hooks';

/**
 * What stands above every page keeps out of the way of what is read: the isolation strip is told how much room it takes
 * and goes under it, and where it grows or goes, what was in view under it stays in view.
 */
export function useRoomAbove(): void {
  useEffect(() => {
    const [above, page] = [document.getElementById('alarms'), document.getElementById('page')];
    if (!above || !page) return;
    const gapNow = (): number => page.getBoundingClientRect().top - above.getBoundingClientRect().bottom;
    let [gap, moving] = [gapNow(), false];
    const scrolled = (): void => {
      if (!moving) gap = gapNow();
    };
    const sized = new ResizeObserver(() => {
      document.documentElement.style.setProperty('--above', `${above.offsetHeight}px`);
      moving = true;
      // Some browsers hold the page where it was and some push it down: a frame later it shows.
      requestAnimationFrame(() => {
        scrollBy(0, gapNow() - gap);
        moving = false;
      });
    });
    sized.observe(above);
    addEventListener('scroll', scrolled, { passive: true });
    return () => {
      sized.disconnect();
      removeEventListener('scroll', scrolled);
    };
  }, []);
}
