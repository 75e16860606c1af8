/** Whether it is likely that there is a keyboard, with keys such as Enter and Tab at hand. */
export const hasKeys = (): boolean => !matchMedia("(pointer: coarse), (width < 40rem)").matches;
