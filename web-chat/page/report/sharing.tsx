/** Links to a report: made, copied, seen, taken back. */
import { useEffect, useId, useState } from 'preact/hooks';
import type { Audience, SharedLink } from '../../../engine/desk/types.ts';
import { deleteShare, getShares, postShare } from '../net/api.ts';

const DAYS = [7, 14, 30, 90] as const;
const FOR: Readonly<Record<Audience, string>> = { customer: 'Page for the customer', shop: 'Record for the shop' };

export function Sharing({ job, withRecord }: { job: string; withRecord: boolean }) {
  const [open, setOpen] = useState(false);
  const [links, setLinks] = useState<readonly SharedLink[]>([]);
  const [made, setMade] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [audience, setAudience] = useState<Audience>('customer');
  const [days, setDays] = useState<number>(DAYS[1]);
  const [what, long, address] = [useId(), useId(), useId()];

  const look = async (): Promise<void> => {
    const got = await getShares(job);
    if (got.ok) setLinks(got.value);
    setTrouble(got.ok ? null : got.what || 'No contact. Try again.');
  };
  useEffect(() => {
    if (open) void look();
  }, [open]);
  const make = async (): Promise<void> => {
    const got = await postShare(job, { for: audience, days });
    setMade(got.ok ? got.value.url : null);
    if (got.ok) await look();
    else setTrouble(got.what || 'No contact. No link was made.');
  };
  const end = async (id: string): Promise<void> => {
    const got = await deleteShare(job, id);
    setMade(null);
    if (got.ok) await look();
    else setTrouble(got.what || 'No contact. The link is still open.');
  };

  return (
    <details class="fold" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Share by a link</summary>
      <form
        class="words"
        onSubmit={(event) => {
          event.preventDefault();
          void make();
        }}
      >
        {withRecord && (
          <>
            <label for={what}>What the link opens</label>
            <select id={what} value={audience} onChange={(e) => setAudience(e.currentTarget.value as Audience)}>
              {Object.entries(FOR).map(([id, words]) => (
                <option key={id} value={id}>
                  {words}
                </option>
              ))}
            </select>
          </>
        )}
        <label for={long}>How long it opens</label>
        <select id={long} value={days} onChange={(event) => setDays(Number(event.currentTarget.value))}>
          {DAYS.map((each) => (
            <option key={each} value={each}>
              {`${each} days`}
            </option>
          ))}
        </select>
        <button type="submit" class="key main">
          Make a link
        </button>
      </form>
      {made !== null && (
        <p class="words" role="status">
          <label for={address}>Copy it now: it is shown this once. Whoever has it reads this report.</label>
          <input id={address} readOnly value={made} onFocus={(event) => event.currentTarget.select()} />
        </p>
      )}
      {trouble !== null && <p role="alert">{trouble}</p>}
      {links.length > 0 && (
        <ul class="links" aria-label="Links that are open">
          {links.map(({ id, audience: of, expires }) => (
            <li key={id}>
              <span>{`${FOR[of]}, until ${expires.slice(0, 10)}`}</span>
              <button type="button" class="key" onClick={() => void end(id)}>
                Take back
              </button>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
