/** The known names nearest to one that is unknown. */
import { nameKey } from './nameKey';

/**
 * How many letters must be put in, left out, changed or swapped with a neighbor to make one word the other. As
 * taught, a row for each letter; any length.
 */
export function editDistance(one: string, other: string): number {
  let twoAbove: number[] = [];
  let above = Array.from({ length: other.length + 1 }, (_, j) => j);
  for (let i = 1; i <= one.length; i++) {
    const row = [i];
    for (let j = 1; j <= other.length; j++) {
      const same = one[i - 1] === other[j - 1] ? 0 : 1;
      const put = (above[j] as number) + 1;
      const left = (row[j - 1] as number) + 1;
      let best = Math.min(put, left, (above[j - 1] as number) + same);
      if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1]) {
        best = Math.min(best, (twoAbove[j - 2] as number) + 1);
      }
      row.push(best);
    }
    twoAbove = above;
    above = row;
  }
  return above[other.length] as number;
}

/** A key up to this long has a bit for each letter. */
const BITS = 32;

/**
 * The edit distances from one key, whose letters are the bits of a number, so that one step takes a whole row (Hyyrö
 * 2003, "A bit-vector algorithm for computing Levenshtein and Damerau edit distances", with swaps).
 */
function distancesFrom(key: string): (other: string) => number {
  if (key === '' || key.length > BITS) return (other) => editDistance(key, other);
  const places = new Int32Array(128); // a key has ASCII signs only
  for (let at = 0; at < key.length; at++)
    places[key.charCodeAt(at)] = (places[key.charCodeAt(at)] as number) | (1 << at);
  const last = 1 << (key.length - 1);
  return (other) => {
    let distance = key.length;
    let [up, down, same, before] = [-1, 0, 0, 0];
    for (let at = 0; at < other.length; at++) {
      const here = places[other.charCodeAt(at)] as number;
      const swapped = ((~same & here) << 1) & before;
      same = (((here & up) + up) ^ up) | here | down | swapped;
      const right = down | ~(same | up);
      const left = same & up;
      if ((right & last) !== 0) distance += 1;
      else if ((left & last) !== 0) distance -= 1;
      const shifted = (right << 1) | 1;
      up = (left << 1) | ~(same | shifted);
      down = shifted & same;
      before = here;
    }
    return distance;
  };
}

/** Which letters a key has: a bit for each of a to z, one for a space, one for all others. */
function lettersOf(key: string): number {
  let letters = 0;
  for (let at = 0; at < key.length; at++) {
    const sign = key.charCodeAt(at);
    letters |= 1 << (sign >= 97 ? sign - 97 : sign === 32 ? 26 : 27);
  }
  return letters;
}
function countBits(bits: number): number {
  const pairs = bits - ((bits >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** Keys of table names, made once: only names of our own tables come here, never a caller's text. */
const tableKeys = new Map<string, string>();
function tableKey(name: string): string {
  const known = tableKeys.get(name);
  if (known !== undefined) return known;
  const key = nameKey(name);
  tableKeys.set(name, key);
  return key;
}

/** A list of names, made ready for comparing. */
interface Ready {
  readonly keys: readonly string[];
  readonly letters: Int32Array;
  /** Places of the names that have this word, of three letters at least. */
  readonly byWord: ReadonlyMap<string, readonly number[]>;
}
const ready = new WeakMap<readonly string[], Ready>();
function makeReady(names: readonly string[]): Ready {
  const keys = names.map(tableKey);
  const byWord = new Map<string, number[]>();
  for (const [at, key] of keys.entries()) {
    for (const word of key.split(' ')) {
      if (word.length < 3) continue;
      const places = byWord.get(word);
      if (places === undefined) byWord.set(word, [at]);
      else places.push(at);
    }
  }
  const made = { keys, letters: Int32Array.from(keys, lettersOf), byWord };
  ready.set(names, made);
  return made;
}

interface Near {
  readonly at: number;
  readonly score: number;
}
const MOST = 5;
const FAR = 0.5;
/** Puts a name where its score belongs, the earlier of two that are equally near first; five are kept. */
function offer(best: Near[], at: number, score: number): void {
  if (score >= FAR) return;
  let place = best.length;
  for (; place > 0; place--) {
    const { at: other, score: theirs } = best[place - 1] as Near;
    if (theirs < score || (theirs === score && other < at)) break;
  }
  best.splice(place, 0, { at, score });
  if (best.length > MOST) best.pop();
}

/** The known names nearest to a text: those that share a word with it first, then by edit distance; at most five. */
export function nearestNames(text: string, names: readonly string[]): string[] {
  const { keys, letters, byWord } = ready.get(names) ?? makeReady(names);
  const key = nameKey(text.slice(0, 60));
  const distanceTo = distancesFrom(key);
  const scoreOf = (other: string): number => distanceTo(other) / Math.max(key.length, other.length, 1);
  const best: Near[] = [];
  const shared = new Set(key.split(' ').flatMap((word) => byWord.get(word) ?? []));
  for (const at of shared) offer(best, at, scoreOf(keys[at] as string) - 1);
  const own = lettersOf(key);
  for (let at = 0; at < keys.length; at++) {
    const worst = best.length < MOST ? FAR : (best[MOST - 1] as Near).score;
    if (worst < 0) break; // a name without a shared word is never so near
    const other = keys[at] as string;
    // each letter that only one of them has must be put in, left out or changed
    const theirs = letters[at] as number;
    const reach = worst * Math.max(key.length, other.length, 1);
    if (Math.abs(key.length - other.length) > reach) continue;
    if (countBits(theirs & ~own) > reach || countBits(own & ~theirs) > reach || shared.has(at)) continue;
    offer(best, at, scoreOf(other));
  }
  return best.map(({ at }) => names[at] as string);
}
