# SPDX-License-Identifier: EPL-2.0
"""Prints what ezdxf reads in a DXF file: a line for each fact, its words parted by tabs. Lengths are as in the file."""
import sys

import ezdxf
from ezdxf.bbox import extents
from ezdxf.entities import Polyline

SAG = 0.001


def say(*words):
    print(*words, sep="\t")


def reach(name, entities):
    box = extents(entities, flatten=SAG)
    if box.has_data:
        say("reach", name, box.extmin.x, box.extmin.y, box.extmax.x, box.extmax.y)


sys.stdout.reconfigure(encoding="utf-8")
document = ezdxf.readfile(sys.argv[1])
audit = document.audit()
for entry in audit.errors + audit.fixes:
    say("fault", entry.message)
say("version", document.dxfversion)
for layer in document.layers:
    say("layer", layer.dxf.name, layer.dxf.linetype)
for entity in document.modelspace():
    say("entity", entity.dxftype(), entity.dxf.layer)
    if entity.dxftype() == "TEXT":
        say("text", entity.dxf.height, entity.dxf.rotation, entity.plain_text())
    elif entity.dxftype() == "CIRCLE":
        say("circle", entity.dxf.layer, entity.dxf.center.x, entity.dxf.center.y, entity.dxf.radius)
    elif isinstance(entity, Polyline):
        for piece in entity.virtual_entities():
            if piece.dxftype() == "ARC":
                say("bend", entity.dxf.layer, piece.dxf.radius)
drawn = [entity for entity in document.modelspace() if entity.dxftype() != "TEXT"]
reach("all", drawn)
for layer in document.layers:
    reach(layer.dxf.name, [entity for entity in drawn if entity.dxf.layer == layer.dxf.name])
say("stated", *document.header["$EXTMIN"][:2], *document.header["$EXTMAX"][:2])
