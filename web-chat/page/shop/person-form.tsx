import { useId, useState } from 'preact/hooks';
import type { PersonWish, Role } from '../../../engine/desk/types.ts';
import type { Truck } from '../../../engine/index.ts';
import { postLink, postPerson, postRevoke } from '../office/net.ts';
import { Devices } from './devices.tsx';
import type { Save } from './shop-page.tsx';

const ROLES: readonly Role[] = ['technician', 'senior', 'dispatcher', 'owner'];
/** An accuracy as on a meter's data sheet: ±(percent % + counts), with 0.1 µF above and 0.01 below ten. */
const METER = { fine: '0.01', coarse: '0.1', split: '10', known: true } as const;

interface PersonProps {
  readonly person: PersonWish;
  readonly trucks: readonly Truck[];
  readonly mine: boolean;
  readonly save: Save;
}
/** One person: name, roles, certification, meter, truck, sign-in. */
export function PersonForm({ person, trucks, mine, save }: PersonProps) {
  const id = useId();
  const [wish, setWish] = useState(person);
  const [percent, setPercent] = useState(person.meter?.percent ?? '');
  const [counts, setCounts] = useState(String(person.meter?.counts ?? ''));
  const set = (part: Partial<PersonWish>) => setWish({ ...wish, ...part });
  const isNew = person.name === '';
  const accuracy = percent.trim().replace(',', '.');
  const meter = accuracy === '' ? null : { ...METER, percent: accuracy, counts: Number(counts) };
  const submit = (event: Event): void => {
    event.preventDefault();
    void save({
      what: wish.name.trim(),
      wrong: wrongIn(wish, accuracy, counts),
      send: () => postPerson({ ...wish, meter }),
    });
  };
  const roles = (role: Role): Role[] =>
    wish.roles.includes(role) ? wish.roles.filter((each) => each !== role) : [...wish.roles, role];
  if (!mine)
    return (
      <article>
        <h3>{person.name}</h3>
        <p>
          {[...person.roles, ...(person.certified ? ['refrigerant certification'] : [])].join(', ')}
          {!person.active && ' · left'}
        </p>
      </article>
    );
  return (
    <article>
      <h3>{isNew ? 'Somebody new' : person.name}</h3>
      <form class="give" onSubmit={submit}>
        <label for={`${id}-name`}>Name</label>
        <input id={`${id}-name`} value={wish.name} onInput={(e) => set({ name: e.currentTarget.value })} />
        <label for={`${id}-initials`}>Initials</label>
        <input
          id={`${id}-initials`}
          value={wish.initials}
          maxLength={4}
          onInput={(e) => set({ initials: e.currentTarget.value })}
        />
        <fieldset class="part">
          <legend>Roles</legend>
          <div class="picks">
            {ROLES.map((role) => (
              <Tick key={role} words={role} on={wish.roles.includes(role)} turn={() => set({ roles: roles(role) })} />
            ))}
          </div>
        </fieldset>
        <Tick
          words="Refrigerant certification (EPA 608)"
          on={wish.certified}
          turn={() => set({ certified: !wish.certified })}
        />
        <Tick words="Of the crew" on={wish.active} turn={() => set({ active: !wish.active })} />
        <label for={`${id}-percent`}>Meter, ± % of the reading</label>
        <input
          id={`${id}-percent`}
          inputMode="decimal"
          value={percent}
          onInput={(e) => setPercent(e.currentTarget.value)}
        />
        <label for={`${id}-counts`}>Meter, and counts</label>
        <input
          id={`${id}-counts`}
          inputMode="numeric"
          value={counts}
          onInput={(e) => setCounts(e.currentTarget.value)}
        />
        {trucks.length > 0 && (
          <>
            <label for={`${id}-truck`}>Truck</label>
            <select id={`${id}-truck`} value={wish.truck ?? ''} onChange={(e) => set({ truck: e.currentTarget.value })}>
              {wish.truck === undefined && <option value="">None</option>}
              {trucks.map((truck) => (
                <option key={truck.id} value={truck.id}>
                  {truck.name}
                </option>
              ))}
            </select>
          </>
        )}
        <button type="submit" class="key main">
          {isNew ? 'Add' : 'Save'}
        </button>
      </form>
      {!isNew && <SignIn person={person} />}
    </article>
  );
}

function wrongIn({ name, initials, roles }: PersonWish, percent: string, counts: string): string | null {
  if (name.trim() === '') return 'A person needs a name.';
  if (initials.trim() === '') return `${name.trim()} needs initials: they stand beside each answer.`;
  if (roles.length === 0) return `${name.trim()} needs a role, one at least.`;
  if (percent !== '' && !/^\d+(\.\d+)?$/.test(percent))
    return 'A meter’s accuracy is a number such as 1.9, as its data sheet says, or nothing where nobody knows.';
  if (percent !== '' && !/^(\d{1,2}|100)?$/.test(counts.trim()))
    return 'A meter’s counts are a whole number from 0 to 100, such as 2.';
  return null;
}

const Tick = ({ words, on, turn }: { words: string; on: boolean; turn: () => void }) => (
  <label class="pick">
    <input type="checkbox" checked={on} onChange={turn} />
    <span>{words}</span>
  </label>
);

function SignIn({ person }: { person: PersonWish }) {
  const [link, setLink] = useState<{ url: string; qr: string } | null>(null);
  const [said, setSaid] = useState('');
  const make = async (): Promise<void> => {
    const got = await postLink(person.id);
    setLink(got.ok ? got.value : null);
    setSaid(got.ok ? 'It works once, for seven days.' : got.what || 'No contact. Press it again.');
  };
  const revoke = async (): Promise<void> => {
    const got = await postRevoke(person.id);
    setLink(null);
    setSaid(got.ok ? `Signed out: ${got.value.ended} sessions and links ended.` : got.what || 'No contact.');
  };
  return (
    <div class="give">
      <div class="row">
        <button type="button" class="key" onClick={() => void make()}>
          Sign-in link
        </button>
        <button type="button" class="key" onClick={() => void revoke()}>
          Sign out everywhere
        </button>
      </div>
      <p role="status">{said}</p>
      {link !== null && (
        <>
          <img class="qr" src={link.qr} alt={`Sign-in link of ${person.name} as a QR code`} width="220" height="220" />
          <p class="link">{link.url}</p>
        </>
      )}
      <Devices person={person} />
    </div>
  );
}
