import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/**
 * A person's own step leads eye and keyboard to the next question. Somebody else's is announced and moves nothing
 * under a thumb.
 */
export function useLeadEye(
  question: string,
  atTop: boolean,
): { heading: RefObject<HTMLHeadingElement | null>; lead: () => void } {
  const heading = useRef<HTMLHeadingElement>(null);
  const shown = useRef(question);
  const own = useRef(false);
  // A ticket opens at its question, unless the person already scrolled, or the call is to be read first.
  useEffect(() => {
    if (window.scrollY === 0 && !atTop) show(heading.current);
  }, []);
  useEffect(() => {
    if (shown.current === question) return;
    shown.current = question;
    if (!own.current) return;
    own.current = false;
    heading.current?.focus({ preventScroll: true });
    show(heading.current);
  }, [question]);
  return {
    heading,
    lead: () => {
      own.current = true;
    },
  };
}

const show = (heading: HTMLElement | null) => heading?.closest('article')?.scrollIntoView({ block: 'start' });

/** Brings an element into view whenever it shows something new. */
export function useShowUp<T extends HTMLElement>(what: unknown): RefObject<T | null> {
  const element = useRef<T>(null);
  useEffect(() => {
    if (what) element.current?.scrollIntoView({ block: 'nearest' });
  }, [what]);
  return element;
}
