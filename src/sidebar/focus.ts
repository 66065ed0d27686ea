/** Moves the focus to an element of this id once it is drawn. */
export const focusSoon = (id: string): void => {
	setTimeout(() => document.getElementById(id)?.focus(), 0);
};
