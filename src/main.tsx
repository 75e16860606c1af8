import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { language, openLocalBook } from "./store/index.ts";
import { App } from "./ui/app/app.tsx";
import "./ui/styles/index.css";

const root = document.getElementById("root");
if (!root) throw new Error("index.html has no #root");

document.documentElement.lang = language;
void openLocalBook();

createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
