/** Single keys for whoever works without a mouse. They can be turned off, because some people’s speech types letters. */
import { useEffect, useRef, useState } from 'preact/hooks';

export interface KeyTo {
  /** One letter or digit, lower case. */
  readonly key: string;
  readonly does: string;
  readonly go: () => void;
}

const KEPT = 'nocool-single-keys';

/** Whether single keys are on, on this device; and the switch. */
export function useKeys(keys: readonly KeyTo[]): { readonly on: boolean; readonly set: (on: boolean) => void } {
  const [on, setOn] = useState(true);
  const latest = useRef(keys);
  latest.current = keys;
  // Read at each press, so that a key pressed right after the switch is already without effect.
  const listens = useRef(on);
  useEffect(() => {
    listens.current = localStorage.getItem(KEPT) !== 'off';
    setOn(listens.current);
  }, []);
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!listens.current) return;
      if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing || types(event.target)) return;
      const found = latest.current.find(({ key }) => key === event.key.toLowerCase());
      if (!found) return;
      event.preventDefault();
      found.go();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, []);
  return {
    on,
    set(next) {
      localStorage.setItem(KEPT, next ? 'on' : 'off');
      listens.current = next;
      setOn(next);
    },
  };
}

const types = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('input, textarea, select');

/** Leads keyboard and eye to an element. */
export function focusOn(id: string): void {
  const element = document.getElementById(id);
  element?.focus({ preventScroll: true });
  element?.scrollIntoView({ block: 'start' });
}
