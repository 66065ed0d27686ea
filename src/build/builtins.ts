/**
 * The language's objects under names of the script's own: a host may look at each use of a global, and one lookup then
 * costs as much as the arithmetic behind it.
 */
const [math, number, object, text, list] = [
	Math,
	Number,
	Object,
	String,
	Array,
];

export {
	list as Array,
	math as Math,
	number as Number,
	object as Object,
	text as String,
};
