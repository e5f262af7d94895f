### prefix: sheet

no-room = Sin espacio junto a la figura: { $labels }.
measured-from = Todas las posiciones se miden desde este vehículo.
