/** A finished call as it is given to somebody: read, printed, or shared by a link that ends. */
import { isSenior, type Me } from '../state.ts';
import { Sharing } from './sharing.tsx';

export function Reports({ job, me }: { job: string; me: Me }) {
  const at = `/jobs/${encodeURIComponent(job)}/report`;
  // The desk decides; this only leaves out what it would refuse.
  const record = isSenior(me) || me.roles.includes('technician');
  return (
    <section class="reports" aria-label="Reports">
      <p class="row">
        <a class="key" href={`${at}/customer`}>
          Page for the customer
        </a>
        {record && (
          <a class="key" href={`${at}/shop`}>
            Record for the shop
          </a>
        )}
      </p>
      <Sharing job={job} withRecord={isSenior(me)} />
    </section>
  );
}
