/** Asks the library in its worker. An answer is plain JSON, so it crosses as it is. */
const worker = new Worker(new URL('./worker.js', import.meta.url), { type: 'module' });
const waiting = new Map();
let last = 0;

worker.onmessage = ({ data: { id, answer, error } }) => {
  const { resolve, reject } = waiting.get(id) ?? {};
  waiting.delete(id);
  if (error === undefined) resolve?.(answer);
  else reject?.(new Error(error));
};

function ask(what, ...given) {
  return new Promise((resolve, reject) => {
    waiting.set(++last, { resolve, reject });
    worker.postMessage({ id: last, ask: what, given });
  });
}

/** What the function of that name answers. Two or more arguments go in a list. */
export const call = (name, input) => ask('call', name, input);

/** All that is wrong with a day, each with the path of its field. */
export const problemsOf = async (day) => (await ask('check', 'planDay', day)).problems;

/** What a field of a day may still hold, as far as these tables have it. */
export const choicesFor = async (field, day) => (await ask('choices', 'planDay', field, day)).choices;

/** What a part of a tested process may still be, after the parts that are chosen. */
export const processChoices = async (part, given) => (await ask('choices', 'testedProcess', part, given)).choices;
