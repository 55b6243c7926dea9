// A begun note is in the hands of one page: two pages that write the same note would hand in half of it each.
// The browser's own locks say whose it is; they end with the page, whatever ends it.

const nameOf = (note) => `begun ${note}`;
let holding = null; // the note that this page holds
let release = () => {};

export function hold(note, taken, from = false) {
  // True where the note is this page's now, and what it held before is free. `from`: even out of another page's hands,
  // which learns it by its own `taken`. A browser without locks lends every page everything.
  if (!navigator.locks || holding === note) return Promise.resolve(true);
  return new Promise((done) => {
    navigator.locks.request(nameOf(note), from ? { steal: true } : { ifAvailable: true }, (lock) => {
      if (!lock) return done(false);
      release();
      holding = note;
      done(true);
      return new Promise((free) => { release = free; });
    }).catch(() => {
      done(true); // locks that cannot be asked for hold nobody up
      if (holding !== note) return;
      holding = null;
      taken();
    });
  });
}

export async function elsewhere() {
  // A question: is this note in another page's hands?
  const { held } = navigator.locks ? await navigator.locks.query() : { held: [] };
  const names = new Set(held.map((one) => one.name));
  return (note) => note !== holding && names.has(nameOf(note));
}
