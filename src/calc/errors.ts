/** What a person can correct: one sentence naming the argument, what is allowed and what came. */
export class InputError extends Error {}
