/** What the library answers to a list of calls, as one text; it runs in every runtime, and uses nothing of any. */

/** One answer, or all that the error says. */
function answerTo(functions, [name, args]) {
  try {
    return functions[name](...args) ?? null;
  } catch (error) {
    if (error.code === undefined) return { thrown: `${name}: ${error}` };
    const { code, path, given, expected, options, nearest, message } = error;
    return { code, path, given: String(given), expected, options, nearest, message };
  }
}

/** The answers to all calls, in their order, as JSON. */
export const answersTo = (functions, calls) => JSON.stringify(calls.map((call) => answerTo(functions, call)));
