import { expose } from "comlink";
import { createSession } from "./session.ts";

// Runs off the page's thread: whatever a file does to its reader, the page stays free, and can end it.
expose(createSession());
