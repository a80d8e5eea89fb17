import { findNamed, lookUp, type Named } from '../../common/names';

/** What is taken off raw produce: nothing but dirt, stems and ends, the core, the pit, or the skin as well. */
export type Preparation = 'whole' | 'trimmed' | 'cored' | 'pitted' | 'peeled' | 'with tops';

/** How forms behave alike: pieces of any cut yield the same share, and printed tables name only one of them. */
export type FormClass = 'whole' | 'cut' | 'puree' | 'sauce' | 'juice' | 'dry';

/** A form that produce is put up in. */
export interface Form extends Named {
  readonly class: FormClass;
  /** Where the form itself says what is taken off. */
  readonly preparation?: Preparation;
}

// Words of the trade, no figures: what each form yields is in the tables.
export const FORMS: readonly Form[] = [
  { name: 'whole', class: 'whole', synonyms: ['raw', 'as bought', 'unpitted', 'leaves', 'cherry tomatoes'] },
  {
    name: 'trimmed',
    class: 'whole',
    preparation: 'trimmed',
    synonyms: ['stemmed', 'hulled', 'shelled', 'husked', 'snapped', 'capped', 'cleaned', 'without tops', 'topped'],
  },
  { name: 'with tops', class: 'cut', preparation: 'with tops', synonyms: ['bought with tops'] },
  { name: 'cored', class: 'cut', preparation: 'cored', synonyms: ['unpeeled', 'cored, unpeeled', 'with skin'] },
  { name: 'pitted', class: 'cut', preparation: 'pitted', synonyms: ['stoned', 'without pits', 'pitted, unpeeled'] },
  {
    name: 'peeled',
    class: 'cut',
    preparation: 'peeled',
    synonyms: ['pared', 'peeled and cored', 'peeled and pitted', 'skinned', 'peeled and seeded', 'flesh'],
  },
  { name: 'halves', class: 'cut', synonyms: ['half', 'halved', 'halved or sliced'] },
  { name: 'quarters', class: 'cut', synonyms: ['quartered'] },
  { name: 'slices', class: 'cut', synonyms: ['sliced', 'rings', 'sliced or cubed', 'sliced or diced', 'chips'] },
  { name: 'wedges', class: 'cut' },
  { name: 'pieces', class: 'cut', synonyms: ['cut', 'cut up', 'whole or pieces', 'pieces or whole'] },
  { name: 'chunks', class: 'cut' },
  { name: 'cubes', class: 'cut', synonyms: ['cubed', '1-inch cubes', 'cubed or whole'] },
  { name: 'diced', class: 'cut', synonyms: ['dice'] },
  { name: 'chopped', class: 'cut', synonyms: ['minced'] },
  { name: 'strips', class: 'cut', synonyms: ['julienne'] },
  { name: 'spears', class: 'cut', synonyms: ['spears or pieces'] },
  { name: 'sections', class: 'cut', synonyms: ['segments'] },
  { name: 'balls', class: 'cut' },
  { name: 'arils', class: 'cut' },
  { name: 'florets', class: 'cut', synonyms: ['flowerets'] },
  { name: 'kernels', class: 'cut', synonyms: ['whole kernel', 'cut from the cob'] },
  { name: 'cream style', class: 'cut', synonyms: ['creamed'] },
  { name: 'shredded', class: 'cut' },
  { name: 'grated', class: 'cut' },
  { name: 'stewed', class: 'cut' },
  { name: 'pie filling', class: 'cut' },
  { name: 'crushed', class: 'cut', synonyms: ['crushed, no added liquid'] },
  { name: 'mashed', class: 'puree' },
  { name: 'pulp', class: 'puree' },
  { name: 'puree', class: 'puree', synonyms: ['pureed', 'leather', 'butter', 'milled', 'sieved'] },
  { name: 'sauce', class: 'sauce', synonyms: ['thin sauce', 'standard sauce, thin', 'standard sauce'] },
  { name: 'thick sauce', class: 'sauce', synonyms: ['standard sauce, thick'] },
  { name: 'juice', class: 'juice' },
  { name: 'juice blend', class: 'juice', synonyms: ['juice, tomato-vegetable blend'] },
  { name: 'sauced', class: 'dry', synonyms: ['with tomato or molasses sauce'] },
  { name: 'baked', class: 'dry', synonyms: ['with molasses sauce'] },
  { name: 'rehydrated', class: 'dry', synonyms: ['shelled, rehydrated', 'dry weight', 'dry'] },
];

/**
 * The form of this name. A phrase that is none as a whole is read by its parts, so that what a table prints
 * (`whole or halved (in water)`, `slices, peeled`) finds the first form it names.
 */
export function findForm(text: string, path = 'form'): Form {
  const [whole] = findNamed(text, FORMS);
  if (whole !== undefined) return whole;
  for (const part of text.split(/[,;()/]|\bor\b|\band\b/)) {
    const [found] = findNamed(part, FORMS);
    if (found !== undefined) return found;
  }
  return lookUp(text, FORMS, path, 'form');
}
