/** On the page of the planner: the reader's choices -> her blanket, drawn and reckoned; kept in the browser and in the address. */

export {};
