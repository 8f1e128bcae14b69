/** Said once on every page. */
export const Conditions = () => (
  <p class="conditions">
    Qualified people only. Follow your employer’s program, the maker’s instructions and local codes. nocool does not
    replace a licensed person.
  </p>
);
