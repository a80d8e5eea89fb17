/** Every field of every public argument and answer has its own line that an editor shows. */
import { test } from 'vitest';
import { publicFace } from '../helpers/publicTypes';
import { expectCounts } from '../helpers/shrinking';
import { undocumentedFields } from './fields';

test('every field has its line', () => {
  expectCounts({
    file: 'tests/docs/undocumented.json',
    found: undocumentedFields(publicFace()),
    mend: 'Put a /** line */ above the field (npm run api -- --undocumented MODULE lists them all).',
  });
});
