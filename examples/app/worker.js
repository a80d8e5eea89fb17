/**
 * The library works here, beside the page, so that a long plan never stops anybody from typing.
 * In your own app, import 'stillroom/catalogue' by its name.
 */
import { call, check, choices } from '../../dist/catalogue/index.js';

const answers = { call, check, choices };

self.onmessage = ({ data: { id, ask, given } }) => {
  try {
    self.postMessage({ id, answer: answers[ask](...given) });
  } catch (error) {
    self.postMessage({ id, error: error.message });
  }
};
