import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

interface SpareProps {
  readonly asks: readonly string[];
  /** Something stands in them, or is wrong with one. */
  readonly used: boolean;
  readonly children: ComponentChildren;
}

/** Readings that may be left out: folded, so that a tall question is shorter. Once open they stay open. */
export function Spare({ asks, used, children }: SpareProps) {
  const [open, setOpen] = useState(used);
  useEffect(() => {
    if (used) setOpen(true);
  }, [used]);
  return (
    <details class="spare" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span>
          May be left out: <small>{asks.join(', ')}</small>
        </span>
      </summary>
      {children}
    </details>
  );
}
