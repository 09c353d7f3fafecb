"""The answers are those that the library keeps in examples/data, to the bit. python -m unittest discover tests"""

import doctest
import gc
import json
import math
import pickle
import threading
import unittest
from array import array
from pathlib import Path

import shankline

try:
    import numpy
except ImportError:
    numpy = None

DATA = Path(__file__).resolve().parent.parent.parent.parent / "data"
JOINTS = ["davit_socket", "seesaw_pivot", "winch_foot"]


def kept(name):
    return json.loads((DATA / name).read_text())


class Documents(unittest.TestCase):
    def test_reports_are_those_that_are_kept(self):
        for name in JOINTS:
            joint = kept(f"{name}.json")
            # Equal as Python's floats are: to the bit.
            report = shankline.check(joint, units="si")
            self.assertEqual(json.dumps(report), json.dumps(kept(f"{name}_report.json")))
            text = (DATA / f"{name}_report.txt").read_text()
            self.assertEqual(shankline.explain(joint, "report", units="si"), text)
            working = (DATA / f"{name}_working.md").read_text()
            self.assertEqual(shankline.explain(joint, "working", "markdown", units="si"), working)
            self.assertEqual(shankline.verdict(joint, units="si")["headline"], report["headline"])

    def test_designs_are_those_that_are_kept(self):
        request = kept("walkway_hanger_design.json")
        self.assertEqual(shankline.design(**request, units="si"), kept("walkway_hanger_designs.json"))

    def test_schemas_are_those_that_are_kept(self):
        for name in ["joint", "design_space", "report", "length_report", "design_report", "connection"]:
            self.assertEqual(shankline.schema(name), kept(f"{name}.schema.json"))

    def test_the_types_have_the_fields_of_the_schemas(self):
        for name, own in [("joint", shankline.Joint), ("report", shankline.Report)]:
            self.assertEqual(set(own.__annotations__), set(shankline.schema(name)["properties"]), name)

    def test_every_question_has_a_function(self):
        for question in shankline.version()["questions"]:
            self.assertTrue(callable(getattr(shankline, question)), question)
        self.assertEqual(shankline.version()["interface"], shankline.INTERFACE)

    def test_the_example_is_true(self):
        self.assertEqual(doctest.testmod(shankline), (0, 5))

    def test_the_other_questions(self):
        joint = kept("seesaw_pivot.json")
        self.assertTrue(shankline.lengths(joint)["accepted"])
        self.assertTrue(shankline.assembly(joint)["layers"])
        self.assertTrue(shankline.draw(joint).startswith("<svg "))
        self.assertIn("SECTION", shankline.draw(joint, format="dxf"))
        self.assertIn("materials", shankline.catalogue()["families"])
        self.assertEqual(shankline.catalogue("M12")["thread"], "M12")
        rows = shankline.table("washers_metric")
        self.assertIn("washers_metric", shankline.tables())
        self.assertGreater(len(rows), 50)
        case = dict.fromkeys(["force_x", "force_z"], "0 kN") | dict.fromkeys(["moment_x", "moment_y", "moment_z"], "0 N m")
        case |= dict.fromkeys("xyz", "0 mm") | {"name": "crowd", "force_y": "-20 kN"}
        connection = {**kept("mezzanine_bracket.json"), "cases": [case]}
        self.assertEqual(shankline.check_connection(connection)["verdict"]["word"], "holds")
        self.assertTrue(shankline.draw_connection(connection, case="crowd").startswith("<svg "))


class Refusals(unittest.TestCase):
    def refused(self, joint):
        with self.assertRaises(shankline.Refusal) as caught:
            shankline.check(joint)
        return caught.exception

    def test_they_say_where(self):
        joint = kept("davit_socket.json")
        joint["stack"]["plies"][1]["hole"] = "17 kN"
        refusal = self.refused(joint)
        self.assertEqual((refusal.code, refusal.place.field), ("request", "joint.stack.plies[1]"))
        self.assertIn("17 kN", str(refusal))
        again = pickle.loads(pickle.dumps(refusal))
        self.assertEqual(again.document, refusal.document)

    def test_a_misspelt_field_is_named(self):
        joint = kept("davit_socket.json")
        joint["load"]["acros"] = joint["load"].pop("across")
        self.assertEqual(self.refused(joint).place.field, "joint.load.acros")

    def test_what_only_the_whole_tells_has_no_place(self):
        joint = kept("davit_socket.json")
        joint["load"]["across"] = "-4 kN"
        refusal = self.refused(joint)
        self.assertEqual((refusal.code, refusal.place), ("out_of_range", None))
        self.assertEqual(refusal.document["value"], {"value": -4000.0, "unit": "N"})

    def test_no_question_and_no_number(self):
        with self.assertRaises(shankline.Refusal):
            shankline.ask("chek")
        with self.assertRaises(ValueError):
            shankline.ask("check", joint={"load": math.nan})
        with self.assertRaises(ValueError):
            shankline.ask_text("version\0", b"{}")
        with self.assertRaises(shankline.Refusal):
            shankline.ask_text("version", b"\xff\xfe")


class Sweeps(unittest.TestCase):
    joint = kept("seesaw_pivot.json")

    def test_a_sweep_is_the_verdict_of_every_case(self):
        across = [float(step) for step in range(100, 20000, 100)]
        swept = shankline.sweep(self.joint, across, [0.0] * len(across), least=shankline.STEADY)
        words = ["undecided", "holds", "does_not_hold"]
        modes = [mode["code"] for mode in shankline.catalogue()["families"]["modes"]]
        for at in range(0, len(across), 23):
            load = {**self.joint["load"], "across": f"{across[at]} N"}
            load["repeats"] = "never"
            verdict = shankline.verdict({**self.joint, "load": load})
            self.assertEqual(words[swept.words[at]], verdict["word"])
            self.assertEqual(modes[swept.modes[at]], verdict["governing"]["mode"])
            self.assertAlmostEqual(swept.utilisations[at], verdict["governing"]["utilisation"], delta=1e-9)

    def test_a_load_that_comes_and_goes_is_told(self):
        joint, many, none = kept("winch_foot.json"), [1000.0] * 40, [0.0] * 40
        steady = shankline.sweep(joint, many, many, least=shankline.STEADY)
        pulsing = shankline.sweep(joint, many, many, least=(many, none))
        # Of a pull that comes and goes nobody has said how often: whether the bolt tires is open.
        self.assertEqual([set(steady.words), set(pulsing.words)], [{1}, {0}])
        with self.assertRaises(TypeError):
            shankline.sweep(self.joint, many, none)
        for wrong in ["steadily", (many, none, none), (many,)]:
            with self.assertRaises(ValueError):
                shankline.sweep(self.joint, many, none, least=wrong)

    def test_bad_cases_are_named(self):
        many = [1000.0] * 500
        many[333] = math.nan
        with self.assertRaises(shankline.Refusal) as caught:
            shankline.sweep(self.joint, many, [0.0] * 500, least=shankline.STEADY)
        self.assertEqual(caught.exception.place.case, 333)
        with self.assertRaises(ValueError):
            shankline.sweep(self.joint, many, [0.0] * 499, least=shankline.STEADY)
        self.assertEqual(len(shankline.sweep(self.joint, [], [], least=shankline.STEADY).words), 0)

    @unittest.skipUnless(numpy, "numpy is not installed")
    def test_arrays_are_not_copied(self):
        from shankline._sweep import _column

        loads = numpy.linspace(0.0, 1e4, 1000)
        column, at = _column(loads, 1000)
        self.assertTrue(numpy.shares_memory(column, loads) and at == loads.ctypes.data)
        # What is not in one piece, or no float64, is copied and comes out the same.
        grid = numpy.column_stack([loads, loads]).astype(numpy.float64)
        whole = shankline.sweep(self.joint, loads, 0.0 * loads, least=shankline.STEADY)
        strided = shankline.sweep(self.joint, grid[:, 0], 0.0 * loads, least=shankline.STEADY)
        self.assertTrue((whole.utilisations == strided.utilisations).all())
        with self.assertRaises(ValueError):
            shankline.sweep(self.joint, grid, grid, least=shankline.STEADY)

    def test_arrays_of_the_standard_library_do(self):
        loads = array("d", range(0, 5000, 10))
        least = (array("d", [0.0] * len(loads)), loads)
        self.assertEqual(len(shankline.sweep(self.joint, loads, loads, least=least).words), len(loads))


class Threads(unittest.TestCase):
    def test_each_gets_its_own_answer(self):
        joints = [kept(f"{name}.json") for name in JOINTS]
        alone = [shankline.verdict(joint) for joint in joints]
        wrong = []

        def run(at):
            wrong.extend(1 for _ in range(50) if shankline.verdict(joints[at]) != alone[at])

        threads = [threading.Thread(target=run, args=(at % 3,)) for at in range(6)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        self.assertEqual(wrong, [])
        gc.collect()


if __name__ == "__main__":
    unittest.main()
