/** A manual page by page as its author wrote it, for whoever prints or draws it: which pages, and where each answer leads. */
import type { Flow, Manual, Step } from '../../vocabulary.ts';

export interface Page {
  readonly flow: Flow;
  /** Whether its steps are gates: make-dead and nothing else. */
  readonly gate: boolean;
}
/** Every page once, in the order in which they are put in place; make-dead is last, where anything is opened. */
export function pagesOf(manual: Manual): Page[] {
  const pages = new Map<string, Page>();
  const add = (flow: Flow, gate: boolean): void => {
    if (pages.has(flow.id)) return;
    pages.set(flow.id, { flow, gate });
    for (const step of Object.values(flow.steps)) if (step.verb === 'include') add(step.page, gate);
  };
  add(manual.root, false);
  if (Object.keys(manual.cabinets).length > 0) add(manual.isolation.page, true);
  for (const rules of Object.values(manual.isolations ?? {})) add(rules.page, true);
  return [...pages.values()];
}

export interface Way {
  /** What was answered or came out; empty where there is one way only. */
  readonly by: string;
  readonly to: string;
}
export function waysOf(step: Step): Way[] {
  switch (step.verb) {
    case 'judge':
      return ways(step.then);
    case 'found':
      return ways(step.to);
    case 'verdict':
      return [{ by: '', to: step.then }];
    case 'approval':
      return [{ by: 'approved', to: step.next }];
    case 'include': {
      const spent = step.again ? [{ by: 'tries spent', to: step.again.spent }] : [];
      return [...ways(step.exits), ...spent];
    }
    default: {
      const part = step.by === undefined ? undefined : step.parts[step.by];
      const options = part && 'options' in part ? (part.options ?? {}) : {};
      const chosen = Object.entries(step.to ?? {}).map(([id, to]) => ({ by: options[id]?.label ?? id, to }));
      const next = step.next === undefined ? [] : [{ by: chosen.length === 0 ? 'answered' : 'else', to: step.next }];
      const cant = step.cant === undefined ? [] : [{ by: 'can’t, skipped', to: step.cant }];
      return [...chosen, ...next, ...cant];
    }
  }
}
const ways = (to: Readonly<Record<string, string>>): Way[] => Object.entries(to).map(([by, t]) => ({ by, to: t }));
