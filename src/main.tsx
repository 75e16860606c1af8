import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { language, openLocalBook, sweepPictures } from "./store/index.ts";
import { App } from "./ui/app/app.tsx";
import "./ui/styles/index.css";

/** How long after opening: the first screen has been drawn by then. */
const sweepDelayMs = 20_000;

const root = document.getElementById("root");
if (!root) throw new Error("index.html has no #root");

document.documentElement.lang = language;
// Long removed photos make room, once there is nothing else to do; what fails now is tried at the next visit.
void openLocalBook().then(() => setTimeout(() => void sweepPictures(), sweepDelayMs));

createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
