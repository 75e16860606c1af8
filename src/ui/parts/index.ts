/**
 * Parts: what every screen is made of, each once. The sheet at /parts shows them in all their states.
 * Only parts are imported from here; what they look like is in the module beside each.
 */
export { Empty, Fault, FaultList, type FieldFault } from "./blocks.tsx";
export { Acts, Button, type ButtonKind, ButtonLink } from "./button.tsx";
export { Choice, type Option, Tick } from "./choice.tsx";
export { Chooser, type ChooserOption } from "./chooser.tsx";
export { classes } from "./classes.ts";
export { DateField } from "./date-field.tsx";
export { Dialog } from "./dialog.tsx";
export { Field, FieldRow } from "./field.tsx";
export { DateText, MoneyText, Nearness } from "./figures.tsx";
export { FilePick } from "./file-pick.tsx";
export { Menu, type MenuAct } from "./menu.tsx";
export { MoneyField } from "./money-field.tsx";
export { clearNotice, clearOldNotice, NoticeBar, Notices, notify } from "./notice.tsx";
export { Beside, Page, Section } from "./page.tsx";
export { Select } from "./select.tsx";
export { type Column, Table } from "./table.tsx";
export { type Tab, Tabs } from "./tabs.tsx";
export { Opened, useWhy, Why, WhyButton, type WhyState } from "./why.tsx";
