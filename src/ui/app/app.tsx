import { Frame } from "./frame.tsx";
import { useRoute } from "./navigate.ts";
import { Screen } from "./places.tsx";

/** The whole app: the frame, and in it the screen of the present address. */
export function App() {
  const route = useRoute();
  return (
    <Frame route={route} saved={null}>
      <Screen route={route} />
    </Frame>
  );
}
