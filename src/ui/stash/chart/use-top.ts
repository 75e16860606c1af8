import { useEffect } from "react";

/** Each step of the page starts at its top, as a page of its own would. */
export function useTop(): void {
  useEffect(() => {
    scrollTo(0, 0); // what it gives back is no clean-up
  }, []);
}
