/** The name of a prep session: its kind and the day it happens, "morning-2027-01-11". */
import type { WindowKind } from "../../../shared/codes.js";

export const sessionKey = (kind: WindowKind, date: string): string => `${kind.toLowerCase()}-${date}`;
export const kindOfSession = (key: string): WindowKind => key.slice(0, key.indexOf("-")).toUpperCase() as WindowKind;
/** YYYY-MM-DD. */
export const dateOfSession = (key: string): string => key.slice(key.indexOf("-") + 1);
