import { expect, test } from 'vitest';
import { publishedLethality } from '../../src/lethality/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test.each([[() => publishedLethality({ about: 'zzzzzz' }), ['UNKNOWN_NAME', 'about']]])(
  'bad input %# is refused',
  (work, error) => {
    expect(errorOf(work)).toEqual(error);
  },
);
