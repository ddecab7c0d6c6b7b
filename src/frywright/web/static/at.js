// Where this kitchen's pages begin: empty for the first of a store, /at/its_key for any other.
export const AT = document.documentElement.dataset.at || "";
