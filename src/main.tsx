import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./ui/app/app.tsx";
import "./ui/styles/index.css";

const root = document.getElementById("root");
if (!root) throw new Error("index.html has no #root");

createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
